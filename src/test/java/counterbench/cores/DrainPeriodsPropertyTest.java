package counterbench.cores;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.cores.CoreEvent.Kind;
import counterbench.cores.rules.DrainNotLogged;
import counterbench.cores.rules.DrainShort;
import counterbench.judgement.Finding;
import counterbench.shared.Address;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The drain periods of facts that somebody threw together: begins without an end, ends without a
 * begin, periods that overlap and touch, plugs fitted and removed between, around the hour in which
 * the clocks change. A second reading of the rule paints minutes on a line that knows no clock.
 */
class DrainPeriodsPropertyTest {
    private static final int RUNS = 400;
    private static final int MINUTES = 120;
    private static final int REQUIRED = 12;
    private static final List<Kind> KINDS =
            List.of(
                    Kind.DRAIN_BEGUN,
                    Kind.DRAIN_BEGUN,
                    Kind.DRAIN_ENDED,
                    Kind.DRAIN_ENDED,
                    Kind.PLUGGED,
                    Kind.UNPLUGGED);

    /**
     * At 08:00Z on 2026-03-08 Chicago's clocks go from 2:00 to 3:00, at 07:00Z on 2026-11-01 from
     * 2:00 back to 1:00 (tz database, America/Chicago; from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "2026-03-08T07:00:00Z, 1",
        "2026-03-08T07:00:00Z, 2",
        "2026-11-01T06:00:00Z, 3",
        "2026-11-01T06:00:00Z, 4",
        "2026-06-10T06:00:00Z, 5"
    })
    void periods_are_those_that_minutes_painted_one_by_one_give(Instant start, long seed) {
        Random random = new Random(seed);
        int counted = 0;
        int uncounted = 0;
        for (int run = 0; run < RUNS; run++) {
            List<Minute> told = someMinutes(random);
            CoreStory story = story(told, start, random);
            Painted painted = Painted.of(told);
            String as = "seed " + seed + ", run " + run + ": " + told;
            DrainPeriods periods = story.history().drainPeriods();
            assertThat(minutes(periods.counted(), start)).as(as).isEqualTo(painted.counted());
            assertThat(periods.longest().map(Duration::toMinutes))
                    .as(as)
                    .isEqualTo(painted.longest().map(Integer::longValue));
            assertThat(drainRules(story)).as(as).isEqualTo(painted.rules());
            counted += painted.longest().isPresent() ? 1 : 0;
            uncounted += painted.counted().cardinality() < painted.logged().cardinality() ? 1 : 0;
        }
        assertThat(counted).as("runs in which a period counts").isGreaterThan(RUNS / 4);
        assertThat(uncounted).as("runs in which one does not").isGreaterThan(RUNS / 10);
    }

    /** Told in any order, each time as the site's sheet would give it, with the offset. */
    private static CoreStory story(List<Minute> told, Instant start, Random random) {
        List<Minute> shuffled = new ArrayList<>(told);
        Collections.shuffle(shuffled, random);
        CoreStory story = CoreStory.removed().under(CoreStory.terms("12", 0, "carton", null));
        shuffled.forEach(
                fact -> {
                    OffsetDateTime wall =
                            start.plus(Duration.ofMinutes(fact.minute()))
                                    .atZone(CoreStory.SITE.zone())
                                    .toOffsetDateTime();
                    story.tellAs(
                            new Address(1, 100 + fact.row()),
                            fact.kind(),
                            OffsetDateTime.parse(wall.toString()).toInstant());
                });
        return story.packed("carton", "2026-12-01T09:00");
    }

    private static List<Minute> someMinutes(Random random) {
        return IntStream.range(0, random.nextInt(12))
                .mapToObj(
                        row ->
                                new Minute(
                                        random.nextInt(MINUTES),
                                        KINDS.get(random.nextInt(KINDS.size())),
                                        row))
                .toList();
    }

    private static BitSet minutes(List<DrainPeriod> periods, Instant start) {
        BitSet minutes = new BitSet();
        periods.forEach(
                p ->
                        minutes.set(
                                (int) Duration.between(start, p.begun()).toMinutes(),
                                (int) Duration.between(start, p.ended()).toMinutes()));
        return minutes;
    }

    private static List<String> drainRules(CoreStory story) {
        return Stream.of(story.judgedBy(new DrainNotLogged()), story.judgedBy(new DrainShort()))
                .flatMap(List::stream)
                .map(Finding::rule)
                .map(rule -> rule.word())
                .toList();
    }

    /** A fact in some minute after the start. */
    private record Minute(int minute, Kind kind, int row) {
        private boolean isDrain() {
            return kind == Kind.DRAIN_BEGUN || kind == Kind.DRAIN_ENDED;
        }

        /** At one instant drain-ended, drain-begun, all others, then by row. */
        private boolean isBefore(Minute other) {
            if (minute != other.minute) {
                return minute < other.minute;
            }
            if (rank() != other.rank()) {
                return rank() < other.rank();
            }
            return row < other.row;
        }

        private int rank() {
            return kind == Kind.DRAIN_ENDED ? 0 : kind == Kind.DRAIN_BEGUN ? 1 : 2;
        }
    }

    /**
     * The second reading, without sorting anything: a begin and an end with neither between them
     * are a period, and it counts if no plug that stayed in was fitted before its end.
     */
    private record Painted(BitSet logged, BitSet counted) {
        private static Painted of(List<Minute> told) {
            BitSet logged = new BitSet();
            BitSet counted = new BitSet();
            for (Minute begin : told) {
                for (Minute end : told) {
                    if (isPeriod(begin, end, told)) {
                        logged.set(begin.minute(), end.minute());
                        if (told.stream().noneMatch(plug -> closedBefore(plug, end, told))) {
                            counted.set(begin.minute(), end.minute());
                        }
                    }
                }
            }
            return new Painted(logged, counted);
        }

        private static boolean isPeriod(Minute begin, Minute end, List<Minute> told) {
            return begin.kind() == Kind.DRAIN_BEGUN
                    && end.kind() == Kind.DRAIN_ENDED
                    && begin.isBefore(end)
                    && told.stream()
                            .filter(Minute::isDrain)
                            .noneMatch(m -> begin.isBefore(m) && m.isBefore(end));
        }

        private static boolean closedBefore(Minute plug, Minute end, List<Minute> told) {
            return plug.kind() == Kind.PLUGGED
                    && plug.minute() < end.minute()
                    && told.stream()
                            .filter(m -> m.kind() == Kind.UNPLUGGED)
                            .noneMatch(plug::isBefore);
        }

        /** The longest run of painted minutes. */
        private Optional<Integer> longest() {
            int longest = 0;
            for (int from = counted.nextSetBit(0); from >= 0; ) {
                int to = counted.nextClearBit(from);
                longest = Math.max(longest, to - from);
                from = counted.nextSetBit(to);
            }
            return longest == 0 ? Optional.empty() : Optional.of(longest);
        }

        private List<String> rules() {
            return longest()
                    .map(l -> l < REQUIRED ? List.of("drain-short") : List.<String>of())
                    .orElse(List.of("drain-not-logged"));
        }
    }
}
