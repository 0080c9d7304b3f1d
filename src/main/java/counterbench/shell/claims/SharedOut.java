package counterbench.shell.claims;

import counterbench.acts.desk.CreditDesk;
import counterbench.acts.desk.MatchCredits.Share;
import counterbench.claims.Credit;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import counterbench.shell.Readings;
import counterbench.shell.Unreadable;
import java.math.BigDecimal;
import java.util.List;

/** Reads to which claims a person shares a credit out: {@code CN-031}, or {@code CN-031=600.00}. */
record SharedOut(CreditDesk desk, String reason) {
    List<Share> of(Credit credit, List<String> words) {
        return words.stream().map(word -> share(credit, word, words.size() == 1)).toList();
    }

    private Share share(Credit credit, String word, boolean alone) {
        int sign = word.indexOf('=');
        String claim = sign < 0 ? word : word.substring(0, sign);
        String job = desk.jobs().get(claim);
        if (job == null) {
            throw new Refused(
                    "claim \"" + claim + "\"",
                    "there is no such claim",
                    NearMatch.of(claim, desk.jobs().keySet())
                            .map(near -> "did you mean " + near + "?")
                            .orElse("claim list names them"));
        }
        if (sign < 0 && !alone) {
            throw new Refused(
                    "claim \"" + claim + "\"",
                    "of several claims each needs its amount",
                    "write it as " + claim + "=600.00");
        }
        BigDecimal amount = sign < 0 ? credit.amount() : amount(word.substring(sign + 1));
        return new Share(credit, claim, job, amount, reason);
    }

    private static BigDecimal amount(String text) {
        try {
            return Readings.EXACT.read(text);
        } catch (Unreadable e) {
            throw new Refused(
                    "amount \"" + text + "\"", "it is not a number", "write it as 600.00");
        }
    }
}
