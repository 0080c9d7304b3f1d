package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Turns rows into facts and leaves out what comes after the as-of instant. */
final class FactReader {

    private final Sheets sheets;
    private final SiteClock clock;
    private final Instant asOf;
    private final Facts facts = new Facts();

    FactReader(Sheets sheets, SiteClock clock, Instant asOf) {
        this.sheets = sheets;
        this.clock = clock;
        this.asOf = asOf;
    }

    Facts read(List<Pack> packs) {
        sheets.rows("jobs").stream().map(this::job).forEach(j -> facts.jobs.put(j.job(), j));
        happened("kits", this::kit).forEach(k -> facts.kits.put(k.kit(), k));
        happened("receipts", this::receipt).forEach(facts.receipts::add);
        happened("moves", this::movement).forEach(facts.movements::add);
        happened("issues", this::issue).forEach(facts.issues::add);
        happened("uses", this::use).forEach(facts.uses::add);
        happened("marks", this::mark).forEach(facts.marks::add);
        happened("cores", this::coreEvent).forEach(facts.coreEvents::add);
        happened("acknowledgements", this::acknowledgement).forEach(facts.acknowledgements::add);
        happened("counts", this::count).forEach(facts.counts::add);
        claims();
        vehicles(packs);
        instruments();
        sheets.rows("parts").forEach(r -> facts.partUnits.put(r.text("part"), r.text("unit")));
        return facts;
    }

    private <F extends Facts.Fact> Stream<F> happened(String kind, Function<Row, F> reader) {
        return sheets.rows(kind).stream()
                .map(reader)
                .filter(f -> !f.at().isAfter(asOf))
                .sorted(Comparator.comparing(Facts.Fact::at).thenComparing(Facts.Fact::line));
    }

    private Facts.Job job(Row r) {
        Optional<Instant> ended = time(r, "completed_at").filter(t -> !t.isAfter(asOf));
        return new Facts.Job(
                r.text("job"),
                r.text("campaign"),
                Vin.plain(r.text("vin")),
                clock.instant(r.text("opened_at")),
                ended,
                r.has("outcome") ? r.text("outcome") : r.has("completed_at") ? "completed" : "",
                r.text("redo_of"));
    }

    private Facts.Kit kit(Row r) {
        return new Facts.Kit(
                r.text("kit"),
                r.text("kit_part"),
                clock.instant(r.text("received_at")),
                r.text("revision"),
                date(r, "expires_on"),
                missing(r.text("missing")),
                r.line());
    }

    private static Map<String, BigDecimal> missing(String text) {
        Map<String, BigDecimal> missing = new LinkedHashMap<>();
        for (String item : text.split(";", -1)) {
            int colon = item.lastIndexOf(':');
            if (colon > 0) {
                missing.merge(
                        item.substring(0, colon).strip(),
                        new BigDecimal(item.substring(colon + 1).strip()),
                        BigDecimal::add);
            }
        }
        return missing;
    }

    private Facts.Receipt receipt(Row r) {
        return new Facts.Receipt(
                r.text("part"),
                r.number("quantity"),
                clock.instant(r.text("received_at")),
                r.text("lot"),
                date(r, "expires_on"),
                r.line());
    }

    private Facts.Movement movement(Row r) {
        return new Facts.Movement(
                r.text("event"),
                at(r),
                r.text("kit"),
                r.text("part"),
                number(r, "quantity"),
                r.text("other_site"),
                r.line());
    }

    private Facts.Issue issue(Row r) {
        return new Facts.Issue(
                r.text("job"),
                at(r),
                r.text("kit"),
                r.text("part"),
                r.number("quantity"),
                r.text("lot"),
                r.line());
    }

    private Facts.Use use(Row r) {
        return new Facts.Use(
                r.text("job"),
                r.text("part"),
                r.number("quantity"),
                r.text("condition"),
                at(r),
                r.text("kit"),
                r.text("lot"),
                r.text("core"),
                r.text("was"),
                r.line());
    }

    private Facts.Mark mark(Row r) {
        return new Facts.Mark(
                r.text("job"),
                r.text("step"),
                at(r),
                number(r, "value"),
                r.text("unit"),
                r.has("fastener") ? Integer.parseInt(r.text("fastener")) : 1,
                r.number("minutes"),
                r.text("instrument"),
                r.line());
    }

    private Facts.CoreEvent coreEvent(Row r) {
        return new Facts.CoreEvent(
                r.text("core"),
                r.text("event"),
                at(r),
                r.text("job"),
                r.text("serial"),
                r.text("part"),
                r.number("quantity"),
                r.text("packaging"),
                r.text("shipment"),
                r.line());
    }

    private Facts.Acknowledgement acknowledgement(Row r) {
        return new Facts.Acknowledgement(
                r.text("shipment"),
                at(r),
                r.text("event"),
                r.text("core"),
                r.text("serial"),
                r.line());
    }

    private Facts.Count count(Row r) {
        return new Facts.Count(
                clock.instant(r.text("counted_at")),
                r.text("part"),
                r.text("kit"),
                r.number("quantity"),
                r.line());
    }

    private void claims() {
        LocalDate today = clock.day(asOf);
        for (Row r : sheets.rows("claims")) {
            Facts.Claim claim = claim(r, today);
            if (!claim.submittedOn().isAfter(today)) {
                facts.claims.put(claim.claim(), claim);
            }
        }
        sheets.rows("credits").stream()
                .map(this::credit)
                .filter(c -> !c.paidOn().isAfter(today))
                .forEach(facts.credits::add);
    }

    private Facts.Claim claim(Row r, LocalDate today) {
        return new Facts.Claim(
                r.text("claim"),
                r.text("job"),
                LocalDate.parse(r.text("submitted_on")),
                r.number("labour_amount")
                        .add(r.number("parts_amount"))
                        .add(r.number("core_charge")),
                date(r, "withdrawn_on").filter(d -> !d.isAfter(today)),
                date(r, "denied_on").filter(d -> !d.isAfter(today)));
    }

    private Facts.Credit credit(Row r) {
        return new Facts.Credit(
                r.text("remittance"),
                r.text("line"),
                r.number("amount"),
                LocalDate.parse(r.text("paid_on")),
                r.text("claim"),
                Vin.plain(r.text("vin")),
                r.text("core"),
                r.text("serial"),
                r.has("kind") ? r.text("kind") : "claim");
    }

    private void vehicles(List<Pack> packs) {
        for (Pack pack : packs) {
            if (!pack.vehicles().isEmpty()) {
                listOf(pack.campaign()).putAll(pack.vehicles());
            }
        }
        for (Row r : sheets.rows("vehicles")) {
            listOf(r.text("campaign")).put(Vin.plain(r.text("vin")), r.cells());
        }
    }

    private Map<String, Map<String, String>> listOf(String campaign) {
        return facts.vehicles.computeIfAbsent(campaign, c -> new LinkedHashMap<>());
    }

    private void instruments() {
        for (Row r : sheets.rows("instruments")) {
            facts.instrumentUnits.put(r.text("instrument"), r.text("unit"));
        }
        for (Row r : sheets.rows("calibrations")) {
            facts.calibrations.add(
                    new Facts.Calibration(
                            r.text("instrument"),
                            LocalDate.parse(r.text("calibrated_on")),
                            LocalDate.parse(r.text("due_on")),
                            number(r, "uncertainty_percent"),
                            number(r, "uncertainty")));
        }
    }

    private Instant at(Row r) {
        return clock.instant(r.text("at"));
    }

    private Optional<Instant> time(Row r, String heading) {
        return r.has(heading) ? Optional.of(clock.instant(r.text(heading))) : Optional.empty();
    }

    private static Optional<LocalDate> date(Row r, String heading) {
        return r.has(heading) ? Optional.of(LocalDate.parse(r.text(heading))) : Optional.empty();
    }

    private static Optional<BigDecimal> number(Row r, String heading) {
        return r.has(heading) ? Optional.of(r.number(heading)) : Optional.empty();
    }
}
