package counterbench.shell.month;

import counterbench.stock.Account;
import java.util.Objects;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Which accounts are meant.
 *
 * @param name the one account's name; null for all of the kind
 */
record AskedAccount(Account.Kind kind, @Nullable String name) implements Predicate<Account> {
    AskedAccount {
        Objects.requireNonNull(kind, "kind");
    }

    @Override
    public boolean test(Account account) {
        return account.kind() == kind && (name == null || name.equals(account.name()));
    }
}
