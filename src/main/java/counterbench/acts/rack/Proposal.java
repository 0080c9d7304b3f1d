package counterbench.acts.rack;

import counterbench.acts.ShipmentState;
import counterbench.shared.units.Weight;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Which cores may go onto a shipment. */
public final class Proposal {
    private Proposal() {}

    /**
     * The cores that wait for a shipment and that no open stop stands against, the oldest deadline
     * first, as many as the limit lets go; a core that was not weighed weighs nothing here.
     *
     * @param board the cores of the site
     * @param yard the yard from which it leaves
     * @param limit the most that the site lets a shipment weigh
     */
    public static List<BoardLine> of(
            Collection<BoardLine> board, ShipmentState to, String yard, @Nullable Weight limit) {
        List<BoardLine> proposed = new ArrayList<>();
        Optional<Weight> sum = to.weight();
        for (BoardLine line : new Board(List.copyOf(board)).lines()) {
            if (line.next() != NextStep.ADD || !line.where().site().equals(yard)) {
                continue;
            }
            Optional<Weight> with =
                    Weight.sum(
                            Stream.concat(sum.stream(), Stream.ofNullable(line.weight())).toList());
            if (limit == null || with.filter(w -> w.exceeds(limit)).isEmpty()) {
                proposed.add(line);
                sum = with;
            }
        }
        return proposed;
    }
}
