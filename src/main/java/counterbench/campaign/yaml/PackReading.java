package counterbench.campaign.yaml;

import counterbench.campaign.Pack;
import counterbench.shared.Refused;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What came of reading a pack: the pack, or every problem that stands in its way.
 *
 * @param pack the pack; null exactly where there are problems
 * @param problems what must be mended, in the order of the file
 * @param warnings what is doubtful and does not stop the pack, in the order of the file
 */
public record PackReading(
        @Nullable Pack pack, List<PackProblem> problems, List<PackProblem> warnings) {
    public PackReading {
        problems = List.copyOf(problems);
        warnings = List.copyOf(warnings);
        if ((pack == null) == problems.isEmpty()) {
            throw new IllegalArgumentException("either a pack or problems");
        }
    }

    /** The pack, or a refusal that bears every problem. */
    public Pack packOrRefuse() {
        if (pack == null) {
            throw new Refused(problems.stream().map(PackProblem::asProblem).toList());
        }
        return pack;
    }
}
