package counterbench.review.store;

import counterbench.claims.Claim;
import counterbench.claims.Credit;
import counterbench.cores.Acknowledgement;
import counterbench.cores.CoreEvent;
import counterbench.facts.FactRow;
import counterbench.procedure.Mark;
import counterbench.review.Horizon;
import counterbench.shared.Address;
import counterbench.shared.Quantity;
import counterbench.shared.units.Weight;
import counterbench.stock.Count;
import counterbench.stock.Issue;
import counterbench.stock.Kit;
import counterbench.stock.PartQuantity;
import counterbench.stock.Receipt;
import counterbench.stock.StockEvent;
import counterbench.stock.Use;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Makes facts of rows, and leaves out those that lie beyond the horizon. */
final class FactReader {
    private final Horizon horizon;

    FactReader(Horizon horizon) {
        this.horizon = horizon;
    }

    private boolean reached(FactRow row, String heading) {
        return horizon.reaches(time(row, heading));
    }

    private static Instant time(FactRow row, String heading) {
        return Objects.requireNonNull(row.time(heading), heading);
    }

    private static String text(FactRow row, String heading) {
        return Objects.requireNonNull(row.text(heading), heading);
    }

    private static @Nullable Quantity quantity(FactRow row) {
        @Nullable BigDecimal amount = row.decimal("quantity");
        return amount == null ? null : new Quantity(amount);
    }

    private static <E extends Enum<E>> E word(E[] values, Function<E, String> word, String said) {
        return Arrays.stream(values)
                .filter(v -> word.apply(v).equals(said))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no such word: " + said));
    }

    Optional<Kit> kit(Address address, FactRow row) {
        if (!reached(row, "received_at")) {
            return Optional.empty();
        }
        return Optional.of(
                new Kit(
                        address,
                        text(row, "kit"),
                        text(row, "kit_part"),
                        time(row, "received_at"),
                        row.text("revision"),
                        row.date("expires_on"),
                        row.text("lot"),
                        row.decimal("unit_cost"),
                        parts(row.text("missing")),
                        new Kit.Receiving(
                                row.text("currency"), row.text("document"), row.text("by"))));
    }

    private static List<PartQuantity> parts(@Nullable String said) {
        if (said == null || said.isEmpty()) {
            return List.of();
        }
        return Arrays.stream(said.split("; "))
                .map(item -> item.split(":"))
                .map(item -> new PartQuantity(item[0], Quantity.of(item[1])))
                .toList();
    }

    Optional<Receipt> receipt(Address address, FactRow row) {
        if (!reached(row, "received_at")) {
            return Optional.empty();
        }
        return Optional.of(
                new Receipt(
                        address,
                        text(row, "part"),
                        Objects.requireNonNull(quantity(row)),
                        time(row, "received_at"),
                        row.text("lot"),
                        row.date("expires_on"),
                        row.decimal("unit_cost"),
                        row.text("by")));
    }

    Optional<StockEvent> event(Address address, FactRow row) {
        if (!reached(row, "at")) {
            return Optional.empty();
        }
        return Optional.of(
                new StockEvent(
                        address,
                        word(StockEvent.Kind.values(), StockEvent.Kind::word, text(row, "event")),
                        time(row, "at"),
                        row.text("kit"),
                        row.text("part"),
                        quantity(row),
                        row.text("lot"),
                        row.text("other_site"),
                        row.text("by")));
    }

    Optional<Count> count(Address address, FactRow row) {
        if (!reached(row, "counted_at")) {
            return Optional.empty();
        }
        return Optional.of(
                new Count(
                        address,
                        time(row, "counted_at"),
                        Objects.requireNonNull(quantity(row)),
                        row.text("part"),
                        row.text("kit"),
                        row.text("by")));
    }

    Optional<Issue> issue(Address address, FactRow row) {
        if (!reached(row, "at")) {
            return Optional.empty();
        }
        return Optional.of(
                new Issue(
                        address,
                        text(row, "job"),
                        time(row, "at"),
                        row.text("kit"),
                        row.text("part"),
                        quantity(row),
                        row.text("lot"),
                        row.text("by")));
    }

    Optional<Use> use(Address address, FactRow row) {
        if (!reached(row, "at")) {
            return Optional.empty();
        }
        @Nullable String was = row.text("was");
        return Optional.of(
                new Use(
                        address,
                        text(row, "job"),
                        text(row, "part"),
                        Objects.requireNonNull(quantity(row)),
                        condition(text(row, "condition")),
                        time(row, "at"),
                        row.text("kit"),
                        row.text("lot"),
                        row.text("core"),
                        was == null ? null : condition(was),
                        row.text("by"),
                        row.text("reason")));
    }

    private static Use.Condition condition(String said) {
        return word(Use.Condition.values(), Use.Condition::word, said);
    }

    Optional<Mark> mark(Address address, FactRow row) {
        if (!reached(row, "at")) {
            return Optional.empty();
        }
        @Nullable Long fastener = row.whole("fastener");
        return Optional.of(
                new Mark(
                        address,
                        text(row, "step"),
                        time(row, "at"),
                        row.decimal("value"),
                        row.text("unit"),
                        fastener == null ? 1 : fastener.intValue(),
                        row.decimal("minutes"),
                        row.text("instrument"),
                        row.text("by")));
    }

    Optional<CoreEvent> core(Address address, FactRow row) {
        if (!reached(row, "at")) {
            return Optional.empty();
        }
        @Nullable BigDecimal quantity = row.decimal("quantity");
        return Optional.of(
                new CoreEvent(
                        address,
                        text(row, "core"),
                        coreKind(text(row, "event")),
                        time(row, "at"),
                        row.text("job"),
                        row.text("serial"),
                        row.text("part"),
                        quantity == null ? null : quantity.intValueExact(),
                        row.text("packaging"),
                        row.text("shipment"),
                        row.text("reason"),
                        row.text("by"),
                        Weight.of(row.decimal("weight"), row.text("weight_unit")).orElse(null),
                        row.text("other_site")));
    }

    private static CoreEvent.Kind coreKind(String said) {
        return word(CoreEvent.Kind.values(), CoreEvent.Kind::word, said);
    }

    Optional<Acknowledgement> acknowledgement(Address address, FactRow row) {
        if (!reached(row, "at")) {
            return Optional.empty();
        }
        return Optional.of(
                new Acknowledgement(
                        address,
                        text(row, "shipment"),
                        time(row, "at"),
                        coreKind(text(row, "event")),
                        row.text("core"),
                        row.text("serial"),
                        row.text("reason")));
    }

    Optional<Credit> credit(Address address, FactRow row) {
        LocalDate paidOn = Objects.requireNonNull(row.date("paid_on"));
        if (!horizon.reaches(paidOn)) {
            return Optional.empty();
        }
        return Optional.of(
                new Credit(
                        text(row, "remittance"),
                        text(row, "line"),
                        Objects.requireNonNull(row.decimal("amount")),
                        paidOn,
                        row.text("claim"),
                        row.text("vin"),
                        row.text("core"),
                        row.text("serial"),
                        creditKind(row),
                        row.text("currency"),
                        address,
                        false));
    }

    /** A line that does not say what it pays, and names a core and no claim, pays for the core. */
    private static Credit.Kind creditKind(FactRow row) {
        @Nullable String said = row.text("kind");
        if (said != null) {
            return word(Credit.Kind.values(), Credit.Kind::word, said);
        }
        boolean ofCore =
                row.text("claim") == null
                        && (row.text("core") != null || row.text("serial") != null);
        return ofCore ? Credit.Kind.CORE : Credit.Kind.CLAIM;
    }

    Optional<Claim> claim(Address address, FactRow row) {
        LocalDate submittedOn = Objects.requireNonNull(row.date("submitted_on"));
        if (!horizon.reaches(submittedOn)) {
            return Optional.empty();
        }
        return Optional.of(
                new Claim(
                        address,
                        text(row, "claim"),
                        text(row, "job"),
                        submittedOn,
                        row.decimal("labour_hours"),
                        row.decimal("labour_amount"),
                        row.decimal("parts_amount"),
                        row.decimal("core_charge"),
                        reachedDay(row.date("withdrawn_on")),
                        reachedDay(row.date("denied_on")),
                        row.text("reason"),
                        row.text("replaces"),
                        row.text("currency"),
                        null));
    }

    private @Nullable LocalDate reachedDay(@Nullable LocalDate day) {
        return day != null && horizon.reaches(day) ? day : null;
    }
}
