package counterbench.labels.gs1;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One part of an element's value, as {@code shared/gs1-ai.csv} writes it: {@code N14.check} is
 * fourteen digits with a check digit, {@code X..20} one to twenty characters, {@code [N4.time]} may
 * be left out.
 *
 * @param optional whether it may be left out, with all behind it
 */
record Component(boolean numeric, int least, int most, boolean optional, Rule rule) {
    private static final Pattern FORM =
            Pattern.compile("(\\[?)([NX])(\\.\\.)?([0-9]+)(?:\\.([a-z0-9]+))?]?");

    /** Of GS1's 82 characters; blanks and all others cannot stand in a value. */
    private static final Pattern CSET_82 = Pattern.compile("[!\"%&'()*+,\\-./0-9:;<=>?A-Z_a-z]*");

    private static final Pattern DIGITS = Pattern.compile("[0-9]*");

    /** What else must hold of the characters. */
    enum Rule {
        NONE(""),
        CHECK("its last digit does not follow from the others"),
        ZERO("it does not begin with 0"),
        DATE("there is no such day"),
        DATE0("there is no such day"),
        TIME("there is no such time"),
        HOUR("there is no such time"),
        MINUTE("there is no such time");

        private final String fault;

        Rule(String fault) {
            this.fault = fault;
        }

        private boolean holds(String text) {
            return switch (this) {
                case NONE -> true;
                case CHECK -> CheckDigit.holds(text);
                case ZERO -> text.startsWith("0");
                case DATE -> Gs1Date.isOne(text, false);
                case DATE0 -> Gs1Date.isOne(text, true);
                case TIME -> HOUR.holds(text.substring(0, 2)) && MINUTE.holds(text.substring(2));
                case HOUR -> Integer.parseInt(text) < 24;
                case MINUTE -> Integer.parseInt(text) < 60;
            };
        }
    }

    static Component of(String written) {
        Matcher parts = FORM.matcher(written);
        if (!parts.matches()) {
            throw new IllegalStateException("no component is written " + written);
        }
        int most = Integer.parseInt(parts.group(4));
        String rule = parts.group(5);
        return new Component(
                parts.group(2).equals("N"),
                parts.group(3) == null ? most : 1,
                most,
                !parts.group(1).isEmpty(),
                rule == null ? Rule.NONE : Rule.valueOf(rule.toUpperCase(Locale.ROOT)));
    }

    /** What is wrong with the characters that belong to it; empty if nothing is. */
    Optional<String> fault(String text) {
        if (text.length() < least || text.length() > most) {
            return Optional.of("it has " + text.length() + " characters, not " + lengths());
        }
        Pattern allowed = numeric ? DIGITS : CSET_82;
        Optional<String> stranger =
                Arrays.stream(text.split(""))
                        .filter(c -> !allowed.matcher(c).matches())
                        .findFirst();
        if (stranger.isPresent()) {
            return Optional.of(
                    (numeric ? "only digits stand there, not \"" : "GS1 labels have no \"")
                            + stranger.get()
                            + "\"");
        }
        return rule.holds(text) ? Optional.empty() : Optional.of(rule.fault);
    }

    private String lengths() {
        return least == most ? String.valueOf(most) : least + " to " + most;
    }
}
