package counterbench.stock;

import counterbench.shared.Quantity;
import java.util.Objects;

/** What an account holds of a part; below zero where it owes it. */
public record BalanceRow(Account account, String part, Quantity quantity) {
    public BalanceRow {
        Objects.requireNonNull(account, "account");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(quantity, "quantity");
    }
}
