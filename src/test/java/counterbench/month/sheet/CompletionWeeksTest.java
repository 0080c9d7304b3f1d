package counterbench.month.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.month.CampaignVehicles;
import counterbench.month.CampaignVehicles.Event;
import counterbench.month.CampaignVehicles.State;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import org.junit.jupiter.api.Test;

/** 2026-01-04 is a Sunday, and ends week 1 of ISO 8601's year 2026. */
class CompletionWeeksTest {
    private static final LocalDate FIRST = LocalDate.of(2025, 10, 1);

    private static Event event(String vin, String day, State state) {
        return new Event(vin, LocalDate.parse(day), state, null, null);
    }

    private static CampaignVehicles campaign(String campaign, Event... events) {
        return new CampaignVehicles(campaign, List.of("A", "B", "C"), List.of(events));
    }

    private static List<String> rows(String last, CampaignVehicles... vehicles) {
        Collection<CampaignVehicles> all = List.of(vehicles);
        return new CompletionWeeks(all, FIRST, LocalDate.parse(last))
                .rows().stream()
                        .map(
                                row ->
                                        row.get("campaign")
                                                + " "
                                                + row.get("week_to")
                                                + " "
                                                + row.get("completed")
                                                + "/"
                                                + row.get("not_needed")
                                                + "/"
                                                + row.get("outstanding"))
                        .toList();
    }

    @Test
    void weeks_with_nothing_at_the_ends_are_left_out_and_those_between_stay() {
        assertThat(
                        rows(
                                "2026-03-31",
                                campaign(
                                        "TK",
                                        event("A", "2026-01-05", State.COMPLETED),
                                        event("B", "2026-01-25", State.NOT_NEEDED),
                                        event("C", "2026-02-09", State.DECLINED))))
                .containsExactly(
                        "TK 2026-01-11 1/0/2", "TK 2026-01-18 1/0/2", "TK 2026-01-25 1/1/1");
    }

    @Test
    void the_last_week_ends_with_the_quarter() {
        assertThat(rows("2026-03-31", campaign("TK", event("A", "2026-03-31", State.COMPLETED))))
                .containsExactly("TK 2026-03-31 1/0/2");
    }

    @Test
    void all_campaigns_have_the_same_weeks_so_that_they_can_be_added() {
        assertThat(
                        rows(
                                "2026-03-31",
                                campaign("HB", event("A", "2026-01-12", State.SCRAPPED)),
                                campaign("TK", event("A", "2026-01-04", State.COMPLETED))))
                .containsExactly(
                        "HB 2026-01-04 0/0/3",
                        "HB 2026-01-11 0/0/3",
                        "HB 2026-01-18 0/0/2",
                        "TK 2026-01-04 1/0/2",
                        "TK 2026-01-11 1/0/2",
                        "TK 2026-01-18 1/0/2");
    }

    @Test
    void where_nothing_came_about_one_row_says_so() {
        assertThat(rows("2026-03-31", campaign("HB"))).containsExactly("HB 2026-03-31 0/0/3");
    }
}
