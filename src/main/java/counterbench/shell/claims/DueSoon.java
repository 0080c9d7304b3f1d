package counterbench.shell.claims;

import counterbench.acts.desk.ClaimDraft;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Says days before that claims will be late, and which are late. */
final class DueSoon {
    private DueSoon() {}

    static List<String> words(Collection<ClaimDraft> drafts, LocalDate today) {
        List<String> words = new ArrayList<>();
        add(
                "late, the last day for the claim is over: ",
                named(drafts, today, left -> left < 0),
                words);
        add(
                "to be claimed within " + DeskOptions.SOON + " days: ",
                named(drafts, today, left -> left >= 0 && left <= DeskOptions.SOON),
                words);
        return words;
    }

    private static void add(String what, String names, List<String> words) {
        if (!names.isEmpty()) {
            words.add(what + names);
        }
    }

    private static String named(
            Collection<ClaimDraft> drafts, LocalDate today, Predicate<Long> left) {
        return drafts.stream()
                .filter(d -> d.daysLeft(today).isPresent())
                .filter(d -> left.test(d.daysLeft(today).getAsLong()))
                .map(d -> d.draft().job() + " (by " + d.draft().submitBy() + ")")
                .collect(Collectors.joining(", "));
    }
}
