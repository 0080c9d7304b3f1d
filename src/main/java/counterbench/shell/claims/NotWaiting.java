package counterbench.shell.claims;

import counterbench.acts.desk.CreditDesk;
import counterbench.acts.store.ReadCreditLines;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The refusal of a line of a remittance that does not wait to be matched. */
final class NotWaiting {
    private NotWaiting() {}

    static Refused refused(String line, CreditDesk desk, ReadCreditLines lines) {
        Set<String> names = lines.names();
        if (!names.contains(line)) {
            return refused(line, "there is no such line", near(line, desk.waiting(), names));
        }
        SortedMap<Long, SortedSet<String>> matches = lines.matches(line);
        return matches.isEmpty()
                ? refused(
                        line,
                        "it clears the charge of the core that it names and pays no claim",
                        "if it names a wrong core, reverse it (journal show) and import it anew")
                : refused(line, "it is matched already: " + words(matches), wayOut(matches));
    }

    /**
     * The nearest of those that wait, and the nearest of all: lines of one remittance are alike.
     */
    private static String near(String line, List<String> waiting, Set<String> all) {
        List<String> near =
                Stream.of(NearMatch.of(line, waiting), NearMatch.of(line, all))
                        .flatMap(Optional::stream)
                        .distinct()
                        .toList();
        return near.isEmpty()
                ? "credit match --dry-run lists those that wait to be matched"
                : "did you mean " + String.join(" or ", near) + "?";
    }

    private static Refused refused(String line, String because, String todo) {
        return new Refused("credit \"" + line + "\"", because, todo);
    }

    private static String words(SortedMap<Long, SortedSet<String>> matches) {
        return matches.entrySet().stream()
                .map(m -> "entry " + m.getKey() + " gave it to " + claims(m.getValue()))
                .collect(Collectors.joining(", "));
    }

    private static String claims(SortedSet<String> claims) {
        return (claims.size() == 1 ? "claim " : "claims ") + String.join(", ", claims);
    }

    private static String wayOut(SortedMap<Long, SortedSet<String>> matches) {
        return "if that is wrong, take it back first: "
                + matches.keySet().stream()
                        .map(entry -> "reverse " + entry + " --reason TEXT")
                        .collect(Collectors.joining(", "));
    }
}
