package counterbench.acts.rack;

import counterbench.claims.Ageing;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is owed for a campaign's cores of one age, counted from the job's completion.
 *
 * @param cores how many cores it is owed for
 * @param missing how many of them were never removed
 */
public record Exposure(String campaign, Ageing age, int cores, int missing, BigDecimal charge) {
    /** By campaign, the youngest first; ages at which nothing is owed are left out. */
    public static List<Exposure> of(Collection<Owed> owed, LocalDate today) {
        Map<String, Map<Ageing, Exposure>> all = new TreeMap<>();
        for (Owed one : owed) {
            Ageing age = Ageing.of(ChronoUnit.DAYS.between(one.since(), today));
            all.computeIfAbsent(one.campaign(), c -> new TreeMap<>())
                    .merge(
                            age,
                            new Exposure(
                                    one.campaign(), age, 1, one.missing() ? 1 : 0, one.charge()),
                            Exposure::plus);
        }
        List<Exposure> exposures = new ArrayList<>();
        all.values().forEach(ages -> exposures.addAll(ages.values()));
        return exposures;
    }

    private Exposure plus(Exposure other) {
        return new Exposure(
                campaign,
                age,
                cores + other.cores,
                missing + other.missing,
                charge.add(other.charge));
    }
}
