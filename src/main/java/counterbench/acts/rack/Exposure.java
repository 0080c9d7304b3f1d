package counterbench.acts.rack;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is owed for a campaign's cores of one age.
 *
 * @param cores how many cores it is owed for
 * @param missing how many of them were never removed
 */
public record Exposure(String campaign, Age age, int cores, int missing, BigDecimal charge) {
    /** Days since the job's completion. */
    public enum Age {
        TO_30("0-30", 30),
        TO_60("31-60", 60),
        TO_90("61-90", 90),
        OVER_90("over 90", Long.MAX_VALUE);

        private final String words;
        private final long last;

        Age(String words, long last) {
            this.words = words;
            this.last = last;
        }

        /** The days, as people write them. */
        public String words() {
            return words;
        }

        static Age of(long days) {
            return Arrays.stream(values())
                    .filter(age -> days <= age.last)
                    .findFirst()
                    .orElse(OVER_90);
        }
    }

    /** By campaign, the youngest first; ages at which nothing is owed are left out. */
    public static List<Exposure> of(Collection<Owed> owed, LocalDate today) {
        Map<String, Map<Age, Exposure>> all = new TreeMap<>();
        for (Owed one : owed) {
            Age age = Age.of(ChronoUnit.DAYS.between(one.since(), today));
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
