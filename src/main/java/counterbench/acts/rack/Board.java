package counterbench.acts.rack;

import counterbench.cores.CoreState;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The living board of a site's cores.
 *
 * @param lines what needs a hand first stands first
 */
public record Board(List<BoardLine> lines) {
    public Board {
        lines = lines.stream().sorted(BoardLine.MOST_URGENT_FIRST).toList();
    }

    /**
     * Charges that will be owed for good unless cores leave in time.
     *
     * @param cores how many
     * @param charge what they come to
     */
    public record AtRisk(int cores, BigDecimal charge) {
        private static AtRisk of(Collection<BoardLine> lines) {
            return new AtRisk(
                    lines.size(),
                    lines.stream().map(BoardLine::charge).reduce(BigDecimal.ZERO, BigDecimal::add));
        }
    }

    /** How many cores there are in each state, in the order of a core's life. */
    public Map<CoreState, Integer> byState() {
        Map<CoreState, Integer> counts = new EnumMap<>(CoreState.class);
        lines.forEach(line -> counts.merge(line.status().state(), 1, Integer::sum));
        return counts;
    }

    /** Of cores that have not left though their day is over. */
    public AtRisk late(LocalDate today) {
        return AtRisk.of(owedHere(Long.MIN_VALUE, -1, today));
    }

    /** Of cores that must leave within so many days, today being the first with none left. */
    public AtRisk within(int days, LocalDate today) {
        return AtRisk.of(owedHere(0, days, today));
    }

    private List<BoardLine> owedHere(long from, long to, LocalDate today) {
        return lines.stream()
                .filter(line -> line.isOwed() && line.charge().signum() > 0)
                .filter(
                        line ->
                                line.daysLeft(today)
                                        .filter(left -> left >= from && left <= to)
                                        .isPresent())
                .toList();
    }
}
