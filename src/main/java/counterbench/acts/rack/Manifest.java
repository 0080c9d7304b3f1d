package counterbench.acts.rack;

import counterbench.acts.CoreCase;
import counterbench.acts.ShipmentState;
import counterbench.campaign.CoreTerms;
import counterbench.cores.CoreEvent;
import counterbench.cores.CoreHistory;
import counterbench.cores.DrainPeriod;
import counterbench.journal.Entry;
import counterbench.judgement.Finding;
import counterbench.shared.Minutes;
import counterbench.shared.Site;
import counterbench.shared.units.Weight;
import counterbench.sheets.report.Report;
import counterbench.sheets.report.ReportRows;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The rows and notes of a shipment's manifest. It tells what was written down and judges nothing:
 * whether the goods may travel is the shipper's to declare.
 */
public final class Manifest {
    private static final List<Report.Note> DECLARATION =
            List.of(
                    new Report.Note(
                            "Fuel-wetted parts",
                            "These units have held fuel or hydraulic fluid. Draining and plugging as"
                                    + " written down here does not show that no residue and no vapour"
                                    + " is left, and this manifest is no finding that the rules of"
                                    + " transport are met."),
                    new Report.Note(
                            "Rules to check",
                            "The carrier's own conditions, and the rules for dangerous goods of every"
                                    + " place that it passes. In the United States look first at 49"
                                    + " CFR 173.29 (an emptied packaging with residue counts as when"
                                    + " it held more, unless it is cleaned and purged of vapours),"
                                    + " 173.120 and 173.150 (flammable and combustible liquids),"
                                    + " 172.102 special provision 136 and 173.222 (dangerous goods in"
                                    + " machinery or apparatus, UN3363). The texts in force on the"
                                    + " day of shipping hold, not this list."),
                    new Report.Note(
                            "Shipper's declaration",
                            "Left to the shipper. Classed, packed, marked and declared by (name, date,"
                                    + " signature): ______________________"));

    private final ShipmentPage page;

    public Manifest(ShipmentPage page) {
        this.page = page;
    }

    /** The rows of each sheet, by what the program calls it. */
    public Map<String, ReportRows> rows() {
        return Map.of(
                "Shipment",
                ReportRows.of(List.of(shipment())),
                "Cores",
                ReportRows.of(page.state().cores().stream().map(this::core).toList()));
    }

    private Map<String, @Nullable Object> shipment() {
        ShipmentState state = page.state();
        Map<String, @Nullable Object> row = new LinkedHashMap<>();
        row.put("shipment", state.name());
        row.put(
                "from",
                page.site().name()
                        + page.otherYard().map(yard -> ", in the yard of " + yard).orElse(""));
        row.put("carrier", state.shipment().carrier());
        row.put("tracking", state.shipment().tracking());
        row.put("sscc", page.sscc());
        row.put("cores", state.cores().size());
        weight(row, state.weight());
        row.put("not_weighed", state.notWeighed());
        row.put("shipped_at", state.shippedAt().orElse(null));
        return row;
    }

    private static void weight(Map<String, @Nullable Object> row, Optional<Weight> weight) {
        row.put("weight", weight.map(Weight::shown).orElse(null));
        row.put("weight_unit", weight.map(w -> w.unit().symbol()).orElse(null));
    }

    private Map<String, @Nullable Object> core(CoreCase core) {
        CoreHistory history = core.core();
        Map<String, @Nullable Object> row = new LinkedHashMap<>();
        row.put("core", history.core());
        row.put(
                "part",
                Optional.ofNullable(history.part())
                        .or(() -> core.terms().map(CoreTerms::part))
                        .orElse(null));
        row.put("serial", history.serial());
        row.put("job", core.job().name());
        row.put("campaign", core.job().job().campaign());
        row.put("removed_at", history.removedAt().orElse(null));
        row.put("removed_by", by(history, CoreEvent.Kind.REMOVED));
        drain(row, core);
        row.put("plugs", history.plugs());
        row.put("plugs_required", core.terms().map(CoreTerms::plugs).orElse(null));
        row.put("plugged_by", by(history, CoreEvent.Kind.PLUGGED));
        Optional<CoreEvent> packed = history.lastPacked();
        row.put("packaging", packed.map(CoreEvent::packaging).orElse(null));
        row.put("packed_at", packed.map(CoreEvent::at).orElse(null));
        row.put("packed_by", packed.map(CoreEvent::by).orElse(null));
        weight(row, packed.map(CoreEvent::weight));
        row.put("findings", findings(history.core()));
        return row;
    }

    private static void drain(Map<String, @Nullable Object> row, CoreCase core) {
        Optional<DrainPeriod> longest =
                core.core().drainPeriods().counted().stream()
                        .max(Comparator.comparing(DrainPeriod::length));
        row.put("drain_begun", longest.map(DrainPeriod::begun).orElse(null));
        row.put("drain_ended", longest.map(DrainPeriod::ended).orElse(null));
        row.put("drain_minutes", longest.map(p -> Minutes.number(p.length())).orElse(null));
        row.put("drain_required", core.terms().map(CoreTerms::drainMinutes).orElse(null));
        row.put("drained_by", by(core.core(), CoreEvent.Kind.DRAIN_ENDED));
    }

    private static @Nullable String by(CoreHistory history, CoreEvent.Kind kind) {
        return history.events().stream()
                .filter(event -> event.kind() == kind)
                .reduce((earlier, later) -> later)
                .map(CoreEvent::by)
                .orElse(null);
    }

    private @Nullable String findings(String core) {
        List<Finding> open = page.open().getOrDefault(core, List.of());
        return open.isEmpty()
                ? null
                : open.stream()
                        .map(f -> f.rule().severity().word() + " " + f.rule().word())
                        .collect(Collectors.joining(", "));
    }

    /** What the last sheet says first. */
    public List<Report.Note> notes() {
        Site site = page.site();
        List<Report.Note> notes = new ArrayList<>();
        notes.add(
                new Report.Note(
                        "Workbook",
                        "The cores of shipment "
                                + page.state().name()
                                + ", as they were drained, plugged and packed by what was written"
                                + " down. Made from the site's journal."));
        notes.add(
                new Report.Note(
                        "Site",
                        site.site() + ", " + site.name() + "; times of " + site.zone().getId()));
        Entry newest = page.newest();
        if (newest != null) {
            notes.add(
                    new Report.Note(
                            "Known",
                            "journal entry "
                                    + newest.number()
                                    + ", recorded "
                                    + site.wallTime(newest.recordedAt())));
            notes.add(new Report.Note("Hash", newest.hash()));
        }
        page.opened().forEach(opened -> notes.addAll(opened(site, opened)));
        notes.addAll(DECLARATION);
        return notes;
    }

    /** When the lead let it go, who and why, and what stood against it. */
    private static List<Report.Note> opened(Site site, ShipmentPage.Opened opened) {
        String findings = opened.findings();
        return List.of(
                new Report.Note(
                        "Let go by the lead",
                        site.wallTime(opened.at())
                                + ", "
                                + opened.person()
                                + ": "
                                + opened.reason()),
                new Report.Note(
                        "What stood against it", findings == null ? "not written down" : findings));
    }
}
