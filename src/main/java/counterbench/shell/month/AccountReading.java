package counterbench.shell.month;

import counterbench.shared.NearMatch;
import counterbench.shell.Unreadable;
import counterbench.stock.Account;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads which accounts are meant: a kind of account, in any letter case, or one by its name. */
final class AccountReading {
    private static final Pattern FORM = Pattern.compile("([A-Za-z]+)(?:\\((.+)\\))?");
    private static final List<String> KINDS =
            Arrays.stream(Account.Kind.values()).map(Account.Kind::name).toList();

    private AccountReading() {}

    static AskedAccount read(String text) {
        Matcher parts = FORM.matcher(text.strip());
        if (!parts.matches()) {
            throw unknown("");
        }
        Account.Kind kind = kind(parts.group(1));
        @Nullable String name = parts.group(2);
        if (name != null && !kind.isNamed()) {
            throw new Unreadable("has a name, but there is only one " + kind + "; leave it out");
        }
        return new AskedAccount(kind, name);
    }

    private static Account.Kind kind(String word) {
        String upper = word.toUpperCase(Locale.ROOT);
        if (!KINDS.contains(upper)) {
            throw unknown(upper);
        }
        return Account.Kind.valueOf(upper);
    }

    private static Unreadable unknown(String word) {
        return new Unreadable(
                "is no account; "
                        + NearMatch.of(word, KINDS)
                                .map(near -> "did you mean " + near + "?")
                                .orElse("there are " + String.join(", ", KINDS)));
    }
}
