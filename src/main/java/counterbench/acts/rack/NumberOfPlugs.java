package counterbench.acts.rack;

import counterbench.shared.Refused;
import java.util.function.IntSupplier;
import org.jspecify.annotations.Nullable;

/** How many plugs an act is about. */
final class NumberOfPlugs {
    private static final long MOST = 1_000;

    private NumberOfPlugs() {}

    /**
     * The number that was said, or another where none was.
     *
     * @throws Refused if it is no number of plugs
     */
    static int of(Handled core, @Nullable Long said, IntSupplier otherwise) {
        if (said == null) {
            return otherwise.getAsInt();
        }
        if (said < 1 || said > MOST) {
            throw new Refused(
                    "plugs \"" + said + "\" of core " + core.tag(),
                    "that is no number of plugs",
                    "write how many, from 1 up");
        }
        return said.intValue();
    }
}
