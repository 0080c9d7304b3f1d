package counterbench.month.sheet;

import counterbench.campaign.KitLine;
import counterbench.campaign.KitTerms;
import counterbench.review.Terms;
import counterbench.shared.Quantity;
import counterbench.spool.SpooledRows;
import counterbench.stock.Account;
import counterbench.stock.LedgerFacts;
import counterbench.stock.Move;
import counterbench.stock.Receipt;
import counterbench.stock.ReceivedKit;
import counterbench.stock.Source;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What lies in kits, in the store and on benches at the month's end and may not be used any more,
 * or not for much longer: 90 days.
 */
final class ExpirySheet {
    /** How many days ahead it looks. */
    static final int DAYS = 90;

    private final SiteMonth period;
    private final Terms terms;
    private final PartNames names;
    private final SpooledRows rows;
    private final Map<Lying, Quantity> inStore = new HashMap<>();
    private final Map<Lying, Use> uses = new HashMap<>();

    ExpirySheet(SiteMonth period, Terms terms, PartNames names, SpooledRows rows) {
        this.period = period;
        this.terms = terms;
        this.names = names;
        this.rows = rows;
    }

    /** Goods of one part and source in one account. */
    private record Lying(Account account, String part, Source source) {}

    /**
     * Until when goods may be used.
     *
     * @param each what one of it is worth, where somebody says
     */
    private record Use(LocalDate until, @Nullable BigDecimal each) {}

    /** Adds what the moves of a component or of the store leave lying. */
    void add(LedgerFacts facts, Collection<Move> moves) {
        Map<Lying, Quantity> here = new HashMap<>();
        for (Move move : moves) {
            if (period.isBeforeEnd(move.at())) {
                add(new Lying(move.from(), move.part(), move.source()), move, here, -1);
                add(new Lying(move.to(), move.part(), move.source()), move, here, 1);
            }
        }
        here.forEach((lying, quantity) -> take(lying, quantity, facts));
    }

    private static void add(Lying lying, Move move, Map<Lying, Quantity> sums, int sign) {
        if (lying.account().isStock()) {
            Quantity change = sign > 0 ? move.quantity() : move.quantity().negate();
            sums.merge(lying, change, Quantity::plus);
        }
    }

    private void take(Lying lying, Quantity quantity, LedgerFacts facts) {
        use(lying, facts).ifPresent(use -> uses.put(lying, use));
        @Nullable Use use = uses.get(lying);
        if (use == null) {
            return;
        }
        if (lying.account().equals(Account.STORE)) {
            inStore.merge(lying, quantity, Quantity::plus);
        } else {
            write(lying, quantity, use);
            uses.remove(lying);
        }
    }

    /** Writes what lies in the store, once all components and the store are added. */
    void end() {
        inStore.forEach((lying, quantity) -> write(lying, quantity, uses.get(lying)));
    }

    private Optional<Use> use(Lying lying, LedgerFacts facts) {
        String name = lying.source().name();
        if (name == null) {
            return Optional.empty();
        }
        return lying.source().kind() == Source.Kind.KIT
                ? ofKit(name, lying.part(), facts)
                : terms.expiryOf(lying.part(), name)
                        .map(day -> new Use(day, cost(lying.part(), name)));
    }

    private static Optional<Use> ofKit(String serial, String part, LedgerFacts facts) {
        return Stream.concat(facts.kits().stream(), facts.arriving().stream())
                .filter(k -> k.kit().kit().equals(serial))
                .flatMap(k -> ofKit(k, part).stream())
                .findFirst();
    }

    private static Optional<Use> ofKit(ReceivedKit received, String part) {
        @Nullable KitTerms contents = received.terms();
        @Nullable LocalDate until = received.kit().expiresOn();
        if (contents == null || until == null) {
            return Optional.empty();
        }
        return contents.contents().stream()
                .filter(line -> line.part().equals(part) && line.shelfLife())
                .findFirst()
                .map(line -> new Use(until, worth(line)));
    }

    private static @Nullable BigDecimal worth(KitLine line) {
        return line.value().signum() == 0 ? null : line.value();
    }

    private @Nullable BigDecimal cost(String part, String lot) {
        return terms.receipts().stream()
                .filter(r -> r.part().equals(part) && lot.equals(r.lot()) && r.unitCost() != null)
                .map(Receipt::unitCost)
                .findFirst()
                .orElse(null);
    }

    private void write(Lying lying, Quantity quantity, @Nullable Use use) {
        if (use == null || !quantity.isPositive()) {
            return;
        }
        long daysLeft = ChronoUnit.DAYS.between(period.lastDay(), use.until());
        if (daysLeft <= DAYS) {
            write(lying, quantity, use, daysLeft);
        }
    }

    private void write(Lying lying, Quantity quantity, Use use, long daysLeft) {
        boolean ofKit = lying.source().kind() == Source.Kind.KIT;
        rows.add(
                List.of(use.until(), lying.part(), lying.account()),
                new RowOf()
                        .with("expires_on", use.until())
                        .with("days_left", daysLeft)
                        .part(lying.part(), names)
                        .with("account", lying.account())
                        .with("kit", ofKit ? lying.source().name() : null)
                        .with("lot", ofKit ? null : lying.source().name())
                        .with("quantity", quantity)
                        .with("value", value(quantity, use.each()))
                        .values());
    }

    private @Nullable BigDecimal value(Quantity quantity, @Nullable BigDecimal each) {
        int cents = period.site().currency().getDefaultFractionDigits();
        return each == null
                ? null
                : each.multiply(quantity.amount()).setScale(cents, RoundingMode.HALF_EVEN);
    }
}
