package counterbench.acts.desk;

import counterbench.campaign.Packs;
import counterbench.review.Terms;
import counterbench.shared.Address;
import counterbench.stock.Move;
import counterbench.stock.Receipt;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What a piece costs that comes into the store: what its receipt says; the pack's value where it
 * came out of a kit; what the last receipt there says where another site sent it; nothing where
 * counting found it, since whatever job it was booked to has paid for it.
 */
public final class InboundCosts implements Function<Move, @Nullable BigDecimal> {
    private final Elsewhere elsewhere;
    private final Packs packs;
    private final Map<Address, Receipt> receipts = new HashMap<>();

    /** What other sites paid. */
    public interface Elsewhere {
        /** What one of a part cost there, by the last receipt up to a time. */
        Optional<BigDecimal> cost(String part, Instant by);
    }

    public InboundCosts(Terms terms, Elsewhere elsewhere) {
        this.elsewhere = elsewhere;
        this.packs = terms.packs();
        terms.receipts().forEach(receipt -> receipts.put(receipt.address(), receipt));
    }

    @Override
    public @Nullable BigDecimal apply(Move move) {
        return switch (move.from().kind()) {
            case SUPPLIER -> cost(receipts.get(move.fact()));
            case COUNT -> BigDecimal.ZERO;
            case BENCH, KIT -> valueOf(packs, move.part());
            case TRANSIT -> elsewhere.cost(move.part(), move.at()).orElse(null);
            default -> null;
        };
    }

    private static @Nullable BigDecimal cost(@Nullable Receipt receipt) {
        return receipt == null ? null : receipt.unitCost();
    }

    /** What the newest pack that lists the part says that one put back is worth. */
    private static BigDecimal valueOf(Packs packs, String part) {
        return packs.all().stream()
                .flatMap(pack -> pack.line(part).stream())
                .reduce((older, newer) -> newer)
                .map(line -> line.value())
                .orElse(BigDecimal.ZERO);
    }
}
