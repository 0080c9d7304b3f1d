package counterbench.month;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.month.CampaignVehicles.Event;
import counterbench.month.CampaignVehicles.Progress;
import counterbench.month.CampaignVehicles.State;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CampaignVehiclesTest {
    private static Event event(String vin, String day, State state, @Nullable String job) {
        return new Event(vin, LocalDate.parse(day), state, job, null);
    }

    private static Progress on(String day, List<String> listed, Event... events) {
        return new CampaignVehicles("C-1", listed, List.of(events)).progress(LocalDate.parse(day));
    }

    @Test
    void what_is_done_stays_done_whatever_is_said_later() {
        Progress progress =
                on(
                        "2026-03-31",
                        List.of("A", "B", "C"),
                        event("A", "2026-01-10", State.COMPLETED, "J-1"),
                        event("A", "2026-02-10", State.SCRAPPED, null),
                        event("B", "2026-01-05", State.UNREACHABLE, null),
                        event("B", "2026-02-05", State.NOT_NEEDED, "J-2"),
                        event("C", "2026-02-01", State.DECLINED, null));

        assertThat(progress.of(State.COMPLETED)).isEqualTo(1);
        assertThat(progress.of(State.NOT_NEEDED)).isEqualTo(1);
        assertThat(progress.unreachable()).isZero();
        assertThat(progress.outstanding()).isEqualTo(1);
        assertThat(progress.of(State.DECLINED)).isEqualTo(1);
    }

    @Test
    void a_vehicle_that_is_on_no_list_counts_apart() {
        Progress progress =
                on("2026-03-31", List.of("A"), event("Z", "2026-01-10", State.COMPLETED, "J-1"));

        assertThat(progress.involved()).isEqualTo(1);
        assertThat(progress.of(State.COMPLETED)).isZero();
        assertThat(progress.unlisted()).isEqualTo(1);
        assertThat(
                        on(
                                        "2026-03-31",
                                        List.of(),
                                        event("Z", "2026-01-10", State.COMPLETED, "J-1"))
                                .involved())
                .isEqualTo(1);
    }

    /** The identity and the cumulative figures that quarterly reports want: 40 CFR 1068.525(b). */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void all_vehicles_are_accounted_for_and_what_is_done_never_decreases(long seed) {
        Random dice = new Random(seed);
        List<String> listed = IntStream.range(0, 40).mapToObj(i -> "V" + i).toList();
        List<Event> events =
                IntStream.range(0, 90)
                        .mapToObj(
                                i -> {
                                    State state =
                                            List.of(State.values())
                                                    .get(dice.nextInt(State.values().length));
                                    return new Event(
                                            "V" + dice.nextInt(45),
                                            LocalDate.of(2026, 1, 1).plusDays(dice.nextInt(500)),
                                            state,
                                            state.isDone() ? "J-" + i : null,
                                            null);
                                })
                        .toList();
        CampaignVehicles vehicles = new CampaignVehicles("C-1", listed, events);
        int done = 0;
        for (Quarter q = new Quarter(2026, 1); q.year() < 2028; q = q.next()) {
            Progress progress = vehicles.progress(q.lastDay());
            int now = progress.of(State.COMPLETED) + progress.of(State.NOT_NEEDED);
            assertThat(now).as("seed %s, %s", seed, q).isGreaterThanOrEqualTo(done);
            assertThat(now + progress.unreachable() + progress.outstanding())
                    .as("seed %s, %s", seed, q)
                    .isEqualTo(progress.involved())
                    .isEqualTo(40);
            done = now;
        }
    }

    /** Due days as 49 CFR 573.7(d) has them, from memory. */
    @ParameterizedTest
    @CsvSource({
        "2026-Q1, 2026-03-31, 2026-04-30",
        "2026-Q2, 2026-06-30, 2026-07-30",
        "2026-Q3, 2026-09-30, 2026-10-30",
        "2026-Q4, 2026-12-31, 2027-02-01",
        "2027-Q3, 2027-09-30, 2027-11-01"
    })
    void a_quarter_ends_and_its_report_is_due(String text, String last, String due) {
        Quarter quarter = Quarter.of(text).orElseThrow();

        assertThat(quarter.toString()).isEqualTo(text);
        assertThat(quarter.lastDay()).isEqualTo(last);
        assertThat(quarter.dueOn()).isEqualTo(due);
        assertThat(Quarter.of(quarter.lastDay())).isEqualTo(quarter);
        assertThat(Quarter.of(quarter.firstDay())).isEqualTo(quarter);
    }

    @Test
    void six_reports_are_counted_from_the_first_quarter() {
        Quarter first = new Quarter(2025, 4);

        assertThat(first.placeAfter(first)).isEqualTo(1);
        assertThat(new Quarter(2027, 1).placeAfter(first)).isEqualTo(Quarter.REPORTED);
        assertThat(Quarter.of("2026-Q5")).isEqualTo(Optional.empty());
    }
}
