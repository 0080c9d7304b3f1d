package counterbench.month.sheet;

import counterbench.shared.Quantity;
import counterbench.spool.SpooledRows;
import counterbench.stock.Account;
import counterbench.stock.Issue;
import counterbench.stock.Kit;
import counterbench.stock.Ledger;
import counterbench.stock.LedgerFacts;
import counterbench.stock.Move;
import counterbench.stock.ReceivedKit;
import counterbench.stock.StockEvent;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Kits that came in the month, and kits that stood on the shelf at some time in it. */
final class KitsSheet {
    private static final String ON_THE_SHELF = "on the shelf";
    private static final String OPENED = "opened";

    private final SiteMonth period;
    private final SpooledRows rows;

    KitsSheet(SiteMonth period, SpooledRows rows) {
        this.period = period;
        this.rows = rows;
    }

    /** Adds the kits of a component. */
    void add(LedgerFacts facts, Ledger ledger) {
        facts.kits().forEach(k -> add(k, k.kit().receivedAt(), facts, ledger));
        for (ReceivedKit kit : facts.arriving()) {
            facts.events().stream()
                    .filter(e -> e.kind() == StockEvent.Kind.ARRIVED)
                    .filter(e -> kit.kit().kit().equals(e.kit()))
                    .map(StockEvent::at)
                    .min(Comparator.naturalOrder())
                    .ifPresent(at -> add(kit, at, facts, ledger));
        }
    }

    private void add(ReceivedKit received, Instant cameAt, LedgerFacts facts, Ledger ledger) {
        Account box = Account.kit(received.kit().kit());
        List<Move> moves =
                ledger.moves().stream()
                        .filter(m -> m.touches(box) && period.isBeforeEnd(m.at()))
                        .toList();
        boolean moved = moves.stream().anyMatch(m -> period.contains(m.at()));
        Map<String, Quantity> held = held(box, moves);
        if (period.contains(cameAt) || moved || !held.isEmpty()) {
            String state = held.isEmpty() ? left(box, moves) : standing(received, held);
            write(received.kit(), cameAt, state, facts);
        }
    }

    private static String standing(ReceivedKit received, Map<String, Quantity> held) {
        return held.equals(received.contents()) ? ON_THE_SHELF : OPENED;
    }

    private static Map<String, Quantity> held(Account box, List<Move> moves) {
        Map<String, Quantity> held = new HashMap<>();
        for (Move move : moves) {
            Quantity change = move.to().equals(box) ? move.quantity() : move.quantity().negate();
            held.merge(move.part(), change, Quantity::plus);
        }
        held.values().removeIf(q -> !q.isPositive());
        return held;
    }

    private static String left(Account box, List<Move> moves) {
        return moves.stream()
                .filter(m -> m.from().equals(box))
                .reduce((earlier, later) -> later)
                .map(m -> left(m.to().kind()))
                .orElse("empty");
    }

    private static String left(Account.Kind to) {
        return switch (to) {
            case BENCH -> "issued";
            case RETURNED -> "returned";
            case TRANSIT -> "sent on";
            case SCRAP -> "scrapped";
            case COUNT -> "not found by counting";
            case SUPPLIER -> "found missing";
            default -> "empty";
        };
    }

    private void write(Kit kit, Instant cameAt, String state, LedgerFacts facts) {
        Optional<Issue> issue =
                facts.issues().stream()
                        .filter(i -> kit.kit().equals(i.kit()) && period.isBeforeEnd(i.at()))
                        .max(Comparator.comparing(Issue::at).thenComparing(Issue::address));
        boolean whole = state.equals(ON_THE_SHELF);
        @Nullable BigDecimal cost = kit.unitCost();
        @Nullable String said = kit.receiving().currency();
        String currency = said == null ? period.site().currency().getCurrencyCode() : said;
        rows.add(
                List.of(cameAt, kit.kit()),
                new RowOf()
                        .with("kit", kit.kit())
                        .with("kit_part", kit.kitPart())
                        .with("revision", kit.revision())
                        .with("received_at", cameAt)
                        .with("state", state)
                        .with("job", whole ? null : issue.map(Issue::job).orElse(null))
                        .with("issued_at", whole ? null : issue.map(Issue::at).orElse(null))
                        .with("expires_on", kit.expiresOn())
                        .with("lot", kit.lot())
                        .with("missing", missing(kit))
                        .with("document", kit.receiving().document())
                        .with("by", kit.receiving().by())
                        .with("unit_cost", cost)
                        .with("on_shelf", whole ? cost : null)
                        .with("currency", cost == null ? null : currency)
                        .values());
    }

    private static @Nullable String missing(Kit kit) {
        return kit.missing().isEmpty()
                ? null
                : kit.missing().stream()
                        .map(m -> m.quantity() + " of " + m.part())
                        .collect(Collectors.joining(", "));
    }
}
