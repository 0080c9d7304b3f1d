package counterbench.people.store;

import static counterbench.db.generated.Tables.ENTRY;
import static counterbench.db.generated.Tables.REVERSALS_FACT;

import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.store.FactTable;
import counterbench.people.Person;
import counterbench.people.PersonName;
import counterbench.people.Role;
import counterbench.shared.Refused;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.impl.DSL;

/** People in the store: as they were added or imported, with the roles that they have now. */
public final class JooqPeople {
    private JooqPeople() {}

    /** Everybody by name, those who act no more as well. */
    public static List<Person> all(DSLContext sql) {
        Map<String, Set<Role>> roles = new TreeMap<>();
        for (FactRow added : counting(sql, FactTable.of(FactKind.PEOPLE))) {
            roles.put(nameOf(added), Role.ofList(added.text("roles")));
        }
        for (FactRow change : counting(sql, FactTable.of(FactKind.ROLE_CHANGES))) {
            roles.computeIfPresent(nameOf(change), (n, r) -> Role.ofList(change.text("roles")));
        }
        return roles.entrySet().stream().map(e -> new Person(e.getKey(), e.getValue())).toList();
    }

    /** The person of that name, who may act no more. */
    public static Optional<Person> find(DSLContext sql, String name) {
        return all(sql).stream().filter(person -> person.name().equals(name)).findFirst();
    }

    /**
     * The person of that name.
     *
     * @throws Refused if there is none
     */
    public static Person get(DSLContext sql, String name) {
        List<String> names = names(sql);
        return find(sql, name)
                .orElseThrow(() -> new Refused(List.of(PersonName.unknown(name, names))));
    }

    /** All names. */
    public static List<String> names(DSLContext sql) {
        return all(sql).stream().map(Person::name).toList();
    }

    /** Refuses an act of somebody who, by now, does not have the role for it. */
    static void mustActAs(DSLContext sql, Person person, Role role, String act) {
        get(sql, person.name()).mustActAs(role, act);
    }

    /** Refuses an act of somebody who, by now, has none of the roles for it. */
    public static void mustActAsOneOf(DSLContext sql, Person person, Set<Role> roles, String act) {
        get(sql, person.name()).mustActAsOneOf(roles, act);
    }

    private static String nameOf(FactRow row) {
        return Objects.requireNonNull(row.text("name"));
    }

    /**
     * Facts that are posted and not reversed, in the order in which they were recorded. Few facts
     * are about people and very many are not, so the entries are asked for these only.
     */
    private static List<FactRow> counting(DSLContext sql, FactTable table) {
        return sql.select(table.table().fields())
                .from(table.table())
                .join(ENTRY)
                .on(ENTRY.BATCH.eq(table.batch()))
                .where(DSL.notExists(DSL.selectOne().from(REVERSALS_FACT).where(reverses(table))))
                .orderBy(orderOf(table))
                .fetch(table::row);
    }

    private static Condition reverses(FactTable table) {
        var reversing = ENTRY.as("reversing");
        return REVERSALS_FACT
                .SITE_NO
                .eq(table.siteNo())
                .and(REVERSALS_FACT.ENTRY.eq(ENTRY.NUMBER))
                .and(
                        REVERSALS_FACT
                                .ENTRY_LINE
                                .isNull()
                                .or(REVERSALS_FACT.ENTRY_LINE.eq(table.line().cast(Long.class))))
                .and(
                        DSL.exists(
                                DSL.selectOne()
                                        .from(reversing)
                                        .where(reversing.BATCH.eq(REVERSALS_FACT.BATCH))));
    }

    private static List<Field<?>> orderOf(FactTable table) {
        return table.kind() == FactKind.ROLE_CHANGES
                ? List.of(table.column("at"), table.batch(), table.line())
                : List.of(table.batch(), table.line());
    }
}
