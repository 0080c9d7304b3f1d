package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What one row of each kind says; what a job or claim came to after the as-of instant is left out.
 */
final class RowFacts {

    private final SiteClock clock;
    private final Instant asOf;

    RowFacts(SiteClock clock, Instant asOf) {
        this.clock = clock;
        this.asOf = asOf;
    }

    Facts.Job job(Row r) {
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

    Facts.Kit kit(Row r) {
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

    Facts.Receipt receipt(Row r) {
        return new Facts.Receipt(
                r.text("part"),
                r.number("quantity"),
                clock.instant(r.text("received_at")),
                r.text("lot"),
                date(r, "expires_on"),
                r.line());
    }

    Facts.Movement movement(Row r) {
        return new Facts.Movement(
                r.text("event"),
                at(r),
                r.text("kit"),
                r.text("part"),
                number(r, "quantity"),
                r.text("other_site"),
                r.line());
    }

    Facts.Issue issue(Row r) {
        return new Facts.Issue(
                r.text("job"),
                at(r),
                r.text("kit"),
                r.text("part"),
                r.number("quantity"),
                r.text("lot"),
                r.line());
    }

    Facts.Use use(Row r) {
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

    Facts.Mark mark(Row r) {
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

    Facts.CoreEvent coreEvent(Row r) {
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

    Facts.Acknowledgement acknowledgement(Row r) {
        return new Facts.Acknowledgement(
                r.text("shipment"),
                at(r),
                r.text("event"),
                r.text("core"),
                r.text("serial"),
                r.line());
    }

    Facts.Count count(Row r) {
        return new Facts.Count(
                clock.instant(r.text("counted_at")),
                r.text("part"),
                r.text("kit"),
                r.number("quantity"),
                r.line());
    }

    Facts.Claim claim(Row r, LocalDate today) {
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

    Facts.Credit credit(Row r) {
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

    private Instant at(Row r) {
        return clock.instant(r.text("at"));
    }

    private Optional<Instant> time(Row r, String heading) {
        return r.has(heading) ? Optional.of(clock.instant(r.text(heading))) : Optional.empty();
    }

    private static Optional<LocalDate> date(Row r, String heading) {
        return r.has(heading) ? Optional.of(LocalDate.parse(r.text(heading))) : Optional.empty();
    }

    static Optional<BigDecimal> number(Row r, String heading) {
        return r.has(heading) ? Optional.of(r.number(heading)) : Optional.empty();
    }
}
