package counterbench.people;

import counterbench.shared.NearMatch;
import counterbench.shared.Problem;
import counterbench.shared.Visible;
import java.text.Normalizer;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Names of people: one spelling, so that nobody acts under two names. */
public final class PersonName {
    private static final int LONGEST = 200;

    private PersonName() {}

    /** The name as it is kept: composed (NFC), with single spaces. */
    public static String tidied(String name) {
        return Normalizer.normalize(name.strip(), Normalizer.Form.NFC).replaceAll("\\s+", " ");
    }

    /** What is wrong with a new person's name, given those that are taken. */
    public static Optional<Problem> problemOf(String name, Collection<String> taken) {
        String asked = "name \"" + name + "\"";
        if (name.isBlank() || name.length() > LONGEST || !Visible.text(name).equals(name)) {
            return Optional.of(
                    new Problem(
                            asked,
                            "a name has 1 to " + LONGEST + " characters, all of them visible",
                            "write it so"));
        }
        return taken.stream()
                .filter(other -> lower(other).equals(lower(name)))
                .findFirst()
                .map(other -> takenBy(asked, name, other));
    }

    private static Problem takenBy(String asked, String name, String other) {
        return other.equals(name)
                ? new Problem(
                        asked,
                        "there is such a person already",
                        "choose another name, or change the roles with person role")
                : new Problem(
                        asked,
                        "there is \"" + other + "\" already, and letter case tells nobody apart",
                        "choose another name");
    }

    /** The refusal where nobody has that name. */
    public static Problem unknown(String name, Collection<String> known) {
        return new Problem(
                "person \"" + name + "\"",
                "there is no such person",
                NearMatch.of(name, known)
                        .map(near -> "did you mean \"" + near + "\"?")
                        .orElse("person list shows everybody"));
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
