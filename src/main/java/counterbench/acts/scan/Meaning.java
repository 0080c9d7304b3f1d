package counterbench.acts.scan;

import counterbench.acts.bench.Measured;
import counterbench.shared.Quantity;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a scan or a typed line stands for at a bench. */
public sealed interface Meaning {
    /** An empty line: a plain step is done. */
    record Nothing() implements Meaning {}

    /** A kit. */
    record Kit(String serial) implements Meaning {}

    /**
     * Some of a part.
     *
     * @param quantity how much; null where it was not said
     * @param lot the lot on its label
     */
    record Part(String part, @Nullable Quantity quantity, @Nullable String lot)
            implements Meaning {}

    /** A core of this or another job, or a tag that no core bears yet. */
    record Core(String tag) implements Meaning {}

    /** A step of the procedure, perhaps with what was read. */
    record OfStep(String step, List<Measured> readings) implements Meaning {
        public OfStep {
            readings = List.copyOf(readings);
        }
    }

    /** A reading. */
    record Reading(Measured measured) implements Meaning {}

    /** An instrument. */
    record Instrument(String name) implements Meaning {}

    /** A job. */
    record OtherJob(String job) implements Meaning {}

    /** A word of the loop with what stands behind it. */
    record Command(Word word, String rest) implements Meaning {}
}
