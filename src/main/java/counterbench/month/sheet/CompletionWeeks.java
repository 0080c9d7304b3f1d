package counterbench.month.sheet;

import counterbench.month.CampaignVehicles;
import counterbench.month.CampaignVehicles.Progress;
import counterbench.month.CampaignVehicles.State;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Completion week by week, from the first week in which anything came about to the last one in
 * which anything changed. Weeks are those of ISO 8601, Monday to Sunday, and the same ones for all
 * campaigns, so that they can be added; the last one ends with the quarter at the latest.
 *
 * @param vehicles the vehicles of each campaign
 * @param first the first day that may be shown
 * @param last the last one
 */
record CompletionWeeks(Collection<CampaignVehicles> vehicles, LocalDate first, LocalDate last) {
    CompletionWeeks {
        vehicles = List.copyOf(vehicles);
    }

    /** The rows, by campaign. */
    List<Map<String, @Nullable Object>> rows() {
        List<LocalDate> weeks = weeks();
        List<List<Progress>> all =
                vehicles.stream().map(v -> weeks.stream().map(v::progress).toList()).toList();
        int begin = 0;
        while (begin < weeks.size() - 1 && isNothing(all, begin)) {
            begin++;
        }
        int end = weeks.size() - 1;
        while (end > begin && isUnchanged(all, end)) {
            end--;
        }
        List<Map<String, @Nullable Object>> rows = new ArrayList<>();
        for (List<Progress> campaign : all) {
            campaign.subList(begin, end + 1).forEach(progress -> rows.add(row(progress)));
        }
        return rows;
    }

    private List<LocalDate> weeks() {
        List<LocalDate> weeks = new ArrayList<>();
        LocalDate day = first.with(TemporalAdjusters.nextOrSame(DayOfWeek.SUNDAY));
        for (; day.isBefore(last); day = day.plusWeeks(1)) {
            weeks.add(day);
        }
        weeks.add(last);
        return weeks;
    }

    private static boolean isNothing(List<List<Progress>> all, int week) {
        return all.stream()
                .map(campaign -> campaign.get(week))
                .allMatch(p -> done(p) + p.unreachable() == 0);
    }

    private static int done(Progress progress) {
        return progress.of(State.COMPLETED) + progress.of(State.NOT_NEEDED);
    }

    private static boolean isUnchanged(List<List<Progress>> all, int week) {
        return all.stream().allMatch(c -> isSame(c.get(week - 1), c.get(week)));
    }

    private static boolean isSame(Progress before, Progress after) {
        return before.of(State.COMPLETED) == after.of(State.COMPLETED)
                && before.of(State.NOT_NEEDED) == after.of(State.NOT_NEEDED)
                && before.outstanding() == after.outstanding();
    }

    private static Map<String, @Nullable Object> row(Progress progress) {
        return new RowOf()
                .with("campaign", progress.campaign())
                .with("week_to", progress.day())
                .with("completed", progress.of(State.COMPLETED))
                .with("not_needed", progress.of(State.NOT_NEEDED))
                .with("outstanding", progress.outstanding())
                .values();
    }
}
