package counterbench.structure;

import static com.tngtech.archunit.base.DescribedPredicate.describe;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The house from its foundation up: every package belongs to a room, every room to a storey. A room
 * knows itself and what lies below, never a room beside it or above.
 */
final class Storeys {
    /** Rooms of a storey; a room is its packages, apart by blanks; two dots: all below, too. */
    private static final List<List<String>> FROM_BELOW =
            List.of(
                    List.of("shared.."),
                    List.of("judgement..", "facts..", "home..", "labels labels.gs1", "spool"),
                    List.of(
                            "db..",
                            "sheets..",
                            "printing..",
                            "people",
                            "journal",
                            "campaign campaign.yaml.."),
                    List.of("journal.store..", "stock..", "intake"),
                    List.of("people.store..", "campaign.store..", "job.."),
                    List.of("intake.store..", "labels.store", "procedure..", "cores..", "claims.."),
                    List.of("review"),
                    List.of("review.store..", "month"),
                    List.of("month.sheet.."),
                    List.of("month.store..", "care..", "acts.."),
                    List.of("shell.."),
                    List.of(""));

    private final String root;

    Storeys(String root) {
        this.root = root;
    }

    /** A class that has no place in the house. */
    DescribedPredicate<JavaClass> homeless() {
        return describe("are in no room of the house", c -> isOurs(c) && place(c).isEmpty());
    }

    /** Whether a class may know another: it is no class of ours, in one room with it, or below. */
    boolean mayKnow(JavaClass from, JavaClass to) {
        Optional<Place> here = place(from);
        Optional<Place> there = isOurs(to) ? place(to) : Optional.empty();
        return here.isEmpty()
                || there.isEmpty()
                || here.equals(there)
                || there.get().storey() < here.get().storey();
    }

    private boolean isOurs(JavaClass type) {
        return type.getPackageName().equals(root) || type.getPackageName().startsWith(root + ".");
    }

    private Optional<Place> place(JavaClass type) {
        for (int storey = 0; storey < FROM_BELOW.size(); storey++) {
            for (String room : FROM_BELOW.get(storey)) {
                if (isIn(type.getPackageName(), room)) {
                    return Optional.of(new Place(storey, room));
                }
            }
        }
        return Optional.empty();
    }

    private boolean isIn(String name, String room) {
        return Arrays.stream(room.split(" ", -1)).anyMatch(p -> matches(name, p));
    }

    private boolean matches(String name, String pattern) {
        boolean deep = pattern.endsWith("..");
        String prefix = deep ? pattern.substring(0, pattern.length() - 2) : pattern;
        String whole = prefix.isEmpty() ? root : root + "." + prefix;
        return name.equals(whole) || (deep && name.startsWith(whole + "."));
    }

    private record Place(int storey, String room) {}
}
