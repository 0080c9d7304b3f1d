package counterbench.cores;

import static counterbench.cores.CoreEvent.Kind.DRAIN_BEGUN;
import static counterbench.cores.CoreEvent.Kind.DRAIN_ENDED;
import static counterbench.cores.CoreStory.at;
import static counterbench.cores.CoreStory.removed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DrainPeriodsTest {
    private static final String NINE = "2026-03-05T09:00";
    private static final String TEN_PAST = "2026-03-05T09:10";
    private static final String QUARTER_PAST = "2026-03-05T09:15";
    private static final String HALF_PAST = "2026-03-05T09:30";

    private static DrainPeriods periods(CoreStory story) {
        return story.history().drainPeriods();
    }

    private static DrainPeriod period(String from, String to) {
        return new DrainPeriod(at(from), at(to));
    }

    @Test
    void a_period_runs_from_a_begin_to_the_next_end() {
        assertThat(periods(removed().drained(NINE, TEN_PAST)).counted())
                .containsExactly(period(NINE, TEN_PAST));
    }

    @Test
    void a_begin_while_one_is_open_replaces_it() {
        CoreStory story = removed().tell(DRAIN_BEGUN, NINE).drained(TEN_PAST, HALF_PAST);
        assertThat(periods(story).counted()).containsExactly(period(TEN_PAST, HALF_PAST));
    }

    @Test
    void an_end_with_none_open_is_ignored() {
        CoreStory story = removed().drained(NINE, TEN_PAST).tell(DRAIN_ENDED, HALF_PAST);
        assertThat(periods(story).counted()).containsExactly(period(NINE, TEN_PAST));
        assertThat(periods(removed().tell(DRAIN_ENDED, NINE)).logged()).isEmpty();
    }

    @Test
    void a_begin_without_an_end_is_no_period() {
        assertThat(periods(removed().tell(DRAIN_BEGUN, NINE)).logged()).isEmpty();
    }

    @Test
    void an_end_comes_before_a_begin_of_the_same_instant_whatever_their_rows() {
        CoreStory story =
                removed()
                        .tell(DRAIN_BEGUN, NINE)
                        .tell(DRAIN_BEGUN, TEN_PAST)
                        .tell(DRAIN_ENDED, TEN_PAST)
                        .tell(DRAIN_ENDED, HALF_PAST);
        assertThat(periods(story).logged())
                .containsExactly(period(NINE, TEN_PAST), period(TEN_PAST, HALF_PAST));
    }

    @Test
    void periods_that_touch_are_one() {
        CoreStory story = removed().drained(NINE, TEN_PAST).drained(TEN_PAST, HALF_PAST);
        assertThat(periods(story).counted()).containsExactly(period(NINE, HALF_PAST));
        assertThat(periods(story).longest()).contains(Duration.ofMinutes(30));
    }

    @Test
    void periods_with_a_gap_stay_apart_and_the_longest_is_judged() {
        CoreStory story = removed().drained(NINE, TEN_PAST).drained(QUARTER_PAST, HALF_PAST);
        assertThat(periods(story).counted()).hasSize(2);
        assertThat(periods(story).longest()).contains(Duration.ofMinutes(15));
    }

    @Test
    void a_period_that_ends_with_the_first_plug_counts() {
        CoreStory story = removed().drained(NINE, TEN_PAST).plugged(5, TEN_PAST);
        assertThat(periods(story).counted()).containsExactly(period(NINE, TEN_PAST));
    }

    @Test
    void a_period_that_ends_after_the_first_plug_does_not_count() {
        CoreStory story =
                removed().plugged(1, NINE).drained(NINE, TEN_PAST).plugged(4, QUARTER_PAST);
        assertThat(periods(story).counted()).isEmpty();
        assertThat(periods(story).logged()).hasSize(1);
    }

    @Test
    void a_period_after_plugging_does_not_lengthen_one_that_it_touches() {
        CoreStory story =
                removed()
                        .drained(NINE, TEN_PAST)
                        .drained(TEN_PAST, HALF_PAST)
                        .plugged(5, QUARTER_PAST);
        assertThat(periods(story).longest()).contains(Duration.ofMinutes(10));
    }

    @Test
    void unplugging_makes_later_periods_count_until_the_next_plug() {
        CoreStory story =
                removed()
                        .plugged(5, NINE)
                        .unplugged(1, TEN_PAST)
                        .drained(TEN_PAST, QUARTER_PAST)
                        .plugged(1, QUARTER_PAST)
                        .drained(QUARTER_PAST, HALF_PAST);
        assertThat(periods(story).counted()).containsExactly(period(TEN_PAST, QUARTER_PAST));
    }

    @Test
    void all_periods_count_where_nothing_was_plugged_since_the_last_unplugging() {
        CoreStory story = removed().plugged(5, NINE).drained(TEN_PAST, HALF_PAST);
        assertThat(periods(story.unplugged(5, TEN_PAST)).counted()).hasSize(1);
    }

    @Test
    void clocks_that_go_forward_do_not_lengthen_a_period() {
        DrainPeriods periods = periods(removed().drained("2026-03-08T01:55", "2026-03-08T03:05"));
        assertThat(periods.longest()).contains(Duration.ofMinutes(10));
    }

    @Test
    void clocks_that_go_back_do_not_shorten_a_period() {
        Instant firstHalfPastOne = Instant.parse("2026-11-01T06:30:00Z");
        Instant secondTwentyPastOne = Instant.parse("2026-11-01T07:20:00Z");
        CoreStory story =
                removed()
                        .tell(DRAIN_BEGUN, firstHalfPastOne)
                        .tell(DRAIN_ENDED, secondTwentyPastOne);
        assertThat(periods(story).longest()).contains(Duration.ofMinutes(50));
    }

    @Test
    void overlapping_periods_are_one() {
        assertThat(
                        DrainPeriods.joined(
                                List.of(
                                        period(TEN_PAST, HALF_PAST),
                                        period(NINE, QUARTER_PAST),
                                        period(TEN_PAST, QUARTER_PAST))))
                .containsExactly(period(NINE, HALF_PAST));
    }

    @Test
    void a_period_cannot_end_before_it_begins() {
        assertThatThrownBy(() -> period(TEN_PAST, NINE))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 26, 2026})
    void joined_periods_cover_the_same_minutes_and_never_touch(long seed) {
        Random random = new Random(seed);
        for (int run = 0; run < 200; run++) {
            List<DrainPeriod> periods =
                    Stream.generate(() -> someMinutes(random)).limit(random.nextInt(8)).toList();
            List<DrainPeriod> joined = DrainPeriods.joined(periods);
            String at = "seed " + seed + ", run " + run;
            assertThat(minutes(joined).boxed().toList())
                    .as(at)
                    .containsExactlyElementsOf(
                            minutes(periods).distinct().sorted().boxed().toList());
            for (int i = 1; i < joined.size(); i++) {
                assertThat(joined.get(i).begun()).as(at).isAfter(joined.get(i - 1).ended());
            }
        }
    }

    private static DrainPeriod someMinutes(Random random) {
        Instant begun = at(NINE).plusSeconds(60L * random.nextInt(40));
        return new DrainPeriod(begun, begun.plusSeconds(60L * (1 + random.nextInt(10))));
    }

    private static LongStream minutes(List<DrainPeriod> periods) {
        return periods.stream()
                .flatMapToLong(
                        p ->
                                LongStream.range(
                                        p.begun().getEpochSecond() / 60,
                                        p.ended().getEpochSecond() / 60));
    }
}
