package counterbench.intake;

import counterbench.facts.FactKind;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.shared.Problem;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Who may import what: paper of a kind belongs to those whose work it records. */
public final class ImportRights {
    private ImportRights() {}

    /** The roles that may import a kind; the lead may import all of them. */
    public static Set<Role> rolesFor(FactKind kind) {
        return switch (kind) {
            case KITS, RECEIPTS, MOVES, COUNTS, ORDERS, SHIPMENTS, ACKNOWLEDGEMENTS, PARTS_LIST ->
                    EnumSet.of(Role.PARTS);
            case ISSUES, CORES -> EnumSet.of(Role.PARTS, Role.TECHNICIAN);
            case USES, MARKS, INSTRUMENTS, CALIBRATIONS -> EnumSet.of(Role.TECHNICIAN);
            case JOBS -> EnumSet.of(Role.TECHNICIAN, Role.WARRANTY);
            case CLAIMS, CREDITS, CONTACTS, RATES, VEHICLES -> EnumSet.of(Role.WARRANTY);
            default -> EnumSet.of(Role.LEAD);
        };
    }

    /** Why somebody may not import sheets of these kinds; empty if all of them may be. */
    public static List<Problem> problems(Person person, Collection<FactKind> kinds) {
        return kinds.stream()
                .distinct()
                .sorted()
                .flatMap(kind -> problem(person, kind).stream())
                .toList();
    }

    private static Optional<Problem> problem(Person person, FactKind kind) {
        Set<Role> roles = rolesFor(kind);
        if (roles.stream().anyMatch(person::mayActAs)) {
            return Optional.empty();
        }
        String wanted = roles.stream().map(Role::word).collect(Collectors.joining(" or "));
        return Optional.of(
                new Problem(
                        "import of " + kind.word(),
                        "this is for the role "
                                + wanted
                                + ", and "
                                + person.name()
                                + " has "
                                + Role.listed(person.roles()),
                        "leave that sheet out, or sign in as somebody with the role"));
    }
}
