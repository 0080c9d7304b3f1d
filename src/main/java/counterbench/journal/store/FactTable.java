package counterbench.journal.store;

import counterbench.db.generated.Tables;
import counterbench.facts.ColumnType;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jspecify.annotations.Nullable;

/**
 * The table of a kind of facts.
 *
 * @param key the key in job order, where the table has one
 * @param columns the fields of the kind's columns, in their order
 * @param vinKey the field of the VIN as compared, where the kind has a VIN that is looked up
 */
public record FactTable(
        FactKind kind,
        Table<?> table,
        @Nullable Field<Long> key,
        Field<Short> siteNo,
        Field<Long> batch,
        Field<Integer> line,
        Field<String> ref,
        Field<Integer> booked,
        List<Field<?>> columns,
        @Nullable Field<String> vinKey) {
    /** Headings that SQL keeps for itself, and the names that stand for them. */
    private static final Map<String, String> RENAMED =
            Map.of(
                    "by", "done_by",
                    "value", "mark_value",
                    "order", "order_name",
                    "condition", "condition_word",
                    "file", "file_name");

    private static final Map<FactKind, FactTable> ALL = all();

    /**
     * Where each table's fields stand: asking a record by field would look through all its names.
     */
    private static final Map<FactKind, Places> PLACES = allPlaces();

    private record Places(int siteNo, int batch, int line, int ref, List<Integer> columns) {}

    private static Map<FactKind, Places> allPlaces() {
        Map<FactKind, Places> places = new EnumMap<>(FactKind.class);
        ALL.forEach((kind, table) -> places.put(kind, placesIn(table)));
        return places;
    }

    private static Places placesIn(FactTable table) {
        List<Field<?>> fields = List.of(table.table().fields());
        return new Places(
                fields.indexOf(table.siteNo()),
                fields.indexOf(table.batch()),
                fields.indexOf(table.line()),
                fields.indexOf(table.ref()),
                table.columns().stream().map(fields::indexOf).toList());
    }

    /** The table of a kind. */
    public static FactTable of(FactKind kind) {
        return Objects.requireNonNull(ALL.get(kind));
    }

    /** Every table, in the order of kinds. */
    public static List<FactTable> values() {
        return List.copyOf(ALL.values());
    }

    private static Map<FactKind, FactTable> all() {
        Map<FactKind, FactTable> tables = new EnumMap<>(FactKind.class);
        for (FactKind kind : FactKind.values()) {
            tables.put(kind, describe(kind, tableOf(kind)));
        }
        return tables;
    }

    private static FactTable describe(FactKind kind, Table<?> table) {
        List<Field<?>> columns = new ArrayList<>();
        kind.columns().forEach(c -> columns.add(field(table, columnName(kind, c.heading()))));
        return new FactTable(
                kind,
                table,
                table.field("K", Long.class),
                typed(table, "SITE_NO", Short.class),
                typed(table, "BATCH", Long.class),
                typed(table, "LINE", Integer.class),
                typed(table, "REF", String.class),
                typed(table, "BOOKED", Integer.class),
                List.copyOf(columns),
                table.field("VIN_KEY", String.class));
    }

    private static String columnName(FactKind kind, String heading) {
        if (heading.equals("line")) {
            return kind == FactKind.REVERSALS ? "entry_line" : "remittance_line";
        }
        return RENAMED.getOrDefault(heading, heading);
    }

    private static Field<?> field(Table<?> table, String name) {
        return Arrays.stream(table.fields())
                .filter(f -> f.getName().equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(table + " has no column " + name));
    }

    private static <T> Field<T> typed(Table<?> table, String name, Class<T> type) {
        return Objects.requireNonNull(table.field(name, type), name);
    }

    private static Table<?> tableOf(FactKind kind) {
        return switch (kind) {
            case PEOPLE -> Tables.PEOPLE_FACT;
            case PARTS_LIST -> Tables.PARTS_FACT;
            case INSTRUMENTS -> Tables.INSTRUMENTS_FACT;
            case CALIBRATIONS -> Tables.CALIBRATIONS_FACT;
            case RATES -> Tables.RATES_FACT;
            case VEHICLES -> Tables.VEHICLES_FACT;
            case ORDERS -> Tables.ORDERS_FACT;
            case KITS -> Tables.KITS_FACT;
            case SHIPMENTS -> Tables.SHIPMENTS_FACT;
            case JOBS -> Tables.JOBS_FACT;
            case CONTACTS -> Tables.CONTACTS_FACT;
            case RECEIPTS -> Tables.RECEIPTS_FACT;
            case ISSUES -> Tables.ISSUES_FACT;
            case USES -> Tables.USES_FACT;
            case MARKS -> Tables.MARKS_FACT;
            case CORES -> Tables.CORES_FACT;
            case MOVES -> Tables.MOVES_FACT;
            case ACKNOWLEDGEMENTS -> Tables.ACKNOWLEDGEMENTS_FACT;
            case COUNTS -> Tables.COUNTS_FACT;
            case CLAIMS -> Tables.CLAIMS_FACT;
            case CREDITS -> Tables.CREDITS_FACT;
            case SITES -> Tables.SITES_FACT;
            case PACKS -> Tables.PACKS_FACT;
            case SETTLEMENTS -> Tables.SETTLEMENTS_FACT;
            case OVERRIDES -> Tables.OVERRIDES_FACT;
            case MATCHES -> Tables.MATCHES_FACT;
            case SEALS -> Tables.SEALS_FACT;
            case REVERSALS -> Tables.REVERSALS_FACT;
            case PINS -> Tables.PINS_FACT;
            case ROLE_CHANGES -> Tables.ROLE_CHANGES_FACT;
        };
    }

    /** The field of a heading. */
    public Field<?> column(String heading) {
        return columns.get(kind.indexOf(heading));
    }

    /** The text field of a heading. */
    public Field<String> text(String heading) {
        return column(heading).coerce(String.class);
    }

    /** Whether the table is kept in job order. */
    public boolean isInJobOrder() {
        return key != null;
    }

    /**
     * All fields that an insert gives, in order: the key if there is one, the common ones, the
     * columns.
     */
    List<Field<?>> inserted() {
        List<Field<?>> fields = new ArrayList<>();
        if (key != null) {
            fields.add(key);
        }
        fields.addAll(List.of(siteNo, batch, line, ref, booked));
        fields.addAll(columns);
        if (vinKey != null) {
            fields.add(vinKey);
        }
        return fields;
    }

    /** The fact in a record whose last or first fields are all fields of this table, in order. */
    public FactRow row(Record record) {
        int first = firstIn(record);
        List<@Nullable Object> values = new ArrayList<>(columns.size());
        for (int place : places().columns()) {
            values.add(record.get(first + place));
        }
        return new FactRow(kind, values, (String) record.get(first + places().ref()));
    }

    /** The site's number in such a record. */
    public int siteNo(Record record) {
        return (Short) Objects.requireNonNull(record.get(firstIn(record) + places().siteNo()));
    }

    /** The batch in such a record. */
    public long batch(Record record) {
        return (Long) Objects.requireNonNull(record.get(firstIn(record) + places().batch()));
    }

    /** The line in such a record. */
    public int line(Record record) {
        return (Integer) Objects.requireNonNull(record.get(firstIn(record) + places().line()));
    }

    /** The fields of the table may stand behind others, or before others. */
    private int firstIn(Record record) {
        int more = record.size() - table.fieldsRow().size();
        return more == 0 || table.field(0).equals(record.field(0)) ? 0 : more;
    }

    private Places places() {
        return Objects.requireNonNull(PLACES.get(kind));
    }

    /** The place of the VIN among the columns. */
    int vinIndex() {
        for (int i = 0; i < kind.columns().size(); i++) {
            if (kind.columns().get(i).type() == ColumnType.VIN) {
                return i;
            }
        }
        throw new IllegalStateException(kind.word() + " has no VIN");
    }
}
