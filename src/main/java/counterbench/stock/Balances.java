package counterbench.stock;

import counterbench.shared.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * What accounts hold, accumulated move by move in any order. To keep memory small over many
 * components, ask for each component's local accounts on its own ({@link Account#isLocal}) and
 * accumulate only the accounts that the whole site shares.
 */
public final class Balances {
    private final Predicate<Account> accounts;
    private final Map<Account, Map<String, Quantity>> sums = new TreeMap<>();

    /** For the accounts that are asked for. */
    public Balances(Predicate<Account> accounts) {
        this.accounts = accounts;
    }

    /** Adds one move to the accounts that are asked for. */
    public void add(Move move) {
        add(move.from(), move.part(), move.quantity().negate());
        add(move.to(), move.part(), move.quantity());
    }

    private void add(Account account, String part, Quantity quantity) {
        if (accounts.test(account)) {
            sums.computeIfAbsent(account, a -> new TreeMap<>())
                    .merge(part, quantity, Quantity::plus);
        }
    }

    /** All that is not zero, by account, then part. */
    public List<BalanceRow> rows() {
        List<BalanceRow> rows = new ArrayList<>();
        sums.forEach(
                (account, parts) ->
                        parts.forEach(
                                (part, quantity) -> {
                                    if (!quantity.isZero()) {
                                        rows.add(new BalanceRow(account, part, quantity));
                                    }
                                }));
        return rows;
    }
}
