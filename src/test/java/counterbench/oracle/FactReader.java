package counterbench.oracle;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/** Turns rows into facts and leaves out what comes after the as-of instant. */
final class FactReader {

    private final Sheets sheets;
    private final SiteClock clock;
    private final Instant asOf;
    private final RowFacts rows;
    private final Facts facts = new Facts();

    FactReader(Sheets sheets, SiteClock clock, Instant asOf) {
        this.sheets = sheets;
        this.clock = clock;
        this.asOf = asOf;
        this.rows = new RowFacts(clock, asOf);
    }

    Facts read(List<Pack> packs) {
        sheets.rows("jobs").stream().map(rows::job).forEach(j -> facts.jobs.put(j.job(), j));
        happened("kits", rows::kit).forEach(k -> facts.kits.put(k.kit(), k));
        happened("receipts", rows::receipt).forEach(facts.receipts::add);
        happened("moves", rows::movement).forEach(facts.movements::add);
        happened("issues", rows::issue).forEach(facts.issues::add);
        happened("uses", rows::use).forEach(facts.uses::add);
        happened("marks", rows::mark).forEach(facts.marks::add);
        happened("cores", rows::coreEvent).forEach(facts.coreEvents::add);
        happened("acknowledgements", rows::acknowledgement).forEach(facts.acknowledgements::add);
        happened("counts", rows::count).forEach(facts.counts::add);
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

    private void claims() {
        LocalDate today = clock.day(asOf);
        for (Row r : sheets.rows("claims")) {
            Facts.Claim claim = rows.claim(r, today);
            if (!claim.submittedOn().isAfter(today)) {
                facts.claims.put(claim.claim(), claim);
            }
        }
        sheets.rows("credits").stream()
                .map(rows::credit)
                .filter(c -> !c.paidOn().isAfter(today))
                .forEach(facts.credits::add);
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
                            RowFacts.number(r, "uncertainty_percent"),
                            RowFacts.number(r, "uncertainty")));
        }
    }
}
