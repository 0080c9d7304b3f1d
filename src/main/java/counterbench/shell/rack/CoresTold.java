package counterbench.shell.rack;

import counterbench.acts.store.RecordAct;
import java.util.stream.Collectors;

/** How the commands of the rack name the cores of what was recorded. */
final class CoresTold {
    private CoresTold() {}

    /** {@code core NC-0072}, {@code cores NC-0072, NC-0073}. */
    static String of(RecordAct.Recorded recorded) {
        return (recorded.facts().size() == 1 ? "core " : "cores ")
                + recorded.facts().stream()
                        .map(row -> row.text("core"))
                        .collect(Collectors.joining(", "));
    }
}
