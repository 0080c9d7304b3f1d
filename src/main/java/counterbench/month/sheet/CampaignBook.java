package counterbench.month.sheet;

import counterbench.campaign.Packs;
import counterbench.month.CampaignVehicles;
import counterbench.month.CampaignVehicles.Progress;
import counterbench.month.CampaignVehicles.State;
import counterbench.month.CampaignVehicles.Vehicle;
import counterbench.month.Quarter;
import counterbench.sheets.report.Report;
import counterbench.sheets.report.ReportRows;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The rows of a quarter's campaign workbook. Figures are cumulative, as 40 CFR 1068.525(b) lists
 * them; that 49 CFR 573.7(c) wants the same is from memory.
 *
 * @param packs the loaded packs
 * @param vehicles the vehicles of each campaign that is shown
 */
public record CampaignBook(Quarter quarter, Packs packs, Collection<CampaignVehicles> vehicles) {
    /** What marks the state of a vehicle that only "Not listed" counts. */
    private static final String NOT_LISTED = ", not listed";

    public CampaignBook {
        vehicles = List.copyOf(vehicles);
    }

    /** The rows of each sheet. */
    public Map<String, ReportRows> rows() {
        return Map.of(
                "Progress", ReportRows.of(progress()),
                "Completion", ReportRows.of(completion()),
                "Vehicles", ReportRows.of(states()));
    }

    private List<Map<String, @Nullable Object>> progress() {
        List<Map<String, @Nullable Object>> rows = new ArrayList<>();
        for (CampaignVehicles campaign : vehicles) {
            Quarter first = first(campaign);
            for (Quarter q = first; q.compareTo(quarter) <= 0; q = q.next()) {
                rows.add(progress(campaign, q, first));
            }
        }
        return rows;
    }

    private Quarter first(CampaignVehicles campaign) {
        LocalDate inForce = packs.revisions(campaign.campaign()).get(0).inForceFrom();
        LocalDate begun = campaign.begun().filter(inForce::isAfter).orElse(inForce);
        return Quarter.of(begun);
    }

    private static Map<String, @Nullable Object> progress(
            CampaignVehicles campaign, Quarter q, Quarter first) {
        Progress progress = campaign.progress(q.lastDay());
        int place = q.placeAfter(first);
        return new RowOf()
                .with("campaign", campaign.campaign())
                .with("quarter", q.toString())
                .with("report", place <= Quarter.REPORTED ? place : null)
                .with("due_on", q.dueOn())
                .with("involved", progress.involved())
                .with("completed", progress.of(State.COMPLETED))
                .with("not_needed", progress.of(State.NOT_NEEDED))
                .with("exported", progress.of(State.EXPORTED))
                .with("stolen", progress.of(State.STOLEN))
                .with("scrapped", progress.of(State.SCRAPPED))
                .with("unreachable", progress.of(State.UNREACHABLE))
                .with("outstanding", progress.outstanding())
                .with("declined", progress.of(State.DECLINED))
                .with("unlisted", progress.unlisted())
                .values();
    }

    private List<Map<String, @Nullable Object>> completion() {
        LocalDate first =
                vehicles.stream()
                        .map(campaign -> first(campaign).firstDay())
                        .min(LocalDate::compareTo)
                        .orElse(quarter.firstDay());
        return new CompletionWeeks(vehicles, first, quarter.lastDay()).rows();
    }

    private List<Map<String, @Nullable Object>> states() {
        List<Map<String, @Nullable Object>> rows = new ArrayList<>();
        for (CampaignVehicles campaign : vehicles) {
            campaign.on(quarter.lastDay()).forEach(v -> rows.add(state(campaign, v)));
        }
        return rows;
    }

    private static Map<String, @Nullable Object> state(CampaignVehicles campaign, Vehicle vehicle) {
        var last = vehicle.last();
        String state = vehicle.state().words();
        return new RowOf()
                .with("campaign", campaign.campaign())
                .with("vin", vehicle.vin())
                .with("listed", vehicle.isListed() ? "yes" : "no")
                .with("state", campaign.isCounted(vehicle) ? state : state + NOT_LISTED)
                .with("since", last == null ? null : last.day())
                .with("job", last == null ? null : last.job())
                .with("reason", last == null ? null : last.reason())
                .values();
    }

    /** What the Notes sheet says first. */
    public List<Report.Note> notes(String asOf, String known) {
        return List.of(
                note(
                        "Workbook",
                        "How far the campaigns are, over all sites of the store, cumulative at the"
                                + " end of each quarter."),
                note("Quarter", quarter + ", to " + quarter.lastDay()),
                note("As of", asOf),
                note("Known", known),
                note(
                        "Identity",
                        "involved = completed + inspected and not needed + exported + stolen +"
                                + " scrapped + unreachable + outstanding"),
                note(
                        "Not listed",
                        "Vehicles that were done and are on no list stand on the sheet Vehicles,"
                                + " and in its chart, under a state of their own that ends in \"not"
                                + " listed\"; the sheets Progress and Completion count them nowhere"
                                + " but in the column Not listed."),
                note(
                        "Rules",
                        "Quarterly cumulative figures for six quarters or until all are inspected:"
                                + " 40 CFR 1068.525(b). That 49 CFR 573.7 asks for the same, split"
                                + " so, by the 30th of the month after the quarter, is from memory:"
                                + " look it up before you rely on it. Federal holidays are not in"
                                + " the due days."),
                note(
                        "Caution",
                        "No number in this workbook is leave to drive a vehicle. The maker's own"
                                + " procedure, local codes and licensed practice come first."));
    }

    private static Report.Note note(String label, String text) {
        return new Report.Note(label, text);
    }
}
