package counterbench.acts.bench;

import counterbench.shared.Refused;
import counterbench.shared.units.Unit;
import counterbench.shared.units.Units;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A value as somebody read it.
 *
 * @param unit as it was written; null where none was
 */
public record Measured(BigDecimal value, @Nullable String unit) {
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private static final int PLACES = 6;

    /** Six places are what the store keeps. */
    private static final Pattern FORM =
            Pattern.compile(
                    "([+-]?[0-9]{1,9}(?:\\.[0-9]{1,6})?)[\\s\\u00a0]*([^0-9\\s.,+-][^0-9]*)?");

    private static final Pattern COMMA = Pattern.compile("(?<=[0-9]),(?=[0-9])");

    public Measured {
        Objects.requireNonNull(value, "value");
    }

    /** A number, or a number and what stands behind it: {@code 47.4}, {@code 31 lbf·ft}. */
    public static Optional<Measured> of(String text) {
        Matcher parts = FORM.matcher(text.strip());
        return parts.matches()
                ? Optional.of(new Measured(new BigDecimal(parts.group(1)), parts.group(2)))
                : Optional.empty();
    }

    /**
     * Numbers in a row, each perhaps with a unit behind it: {@code 47.4 46.8 31 lbf·ft}. Empty
     * where a word is neither.
     */
    public static Optional<List<Measured>> row(List<String> words) {
        List<String> texts = new ArrayList<>();
        for (String word : words) {
            if (of(word).isPresent()) {
                texts.add(word);
            } else if (texts.isEmpty()) {
                return Optional.empty();
            } else {
                texts.set(texts.size() - 1, texts.get(texts.size() - 1) + " " + word);
            }
        }
        List<Measured> row = texts.stream().flatMap(text -> of(text).stream()).toList();
        return row.size() == texts.size() ? Optional.of(row) : Optional.empty();
    }

    /**
     * The same where nothing else will do.
     *
     * @throws Refused where a word is neither
     */
    public static List<Measured> rowOf(List<String> words) {
        return row(words).orElseThrow(() -> unreadable(String.join(" ", words)));
    }

    private static Refused unreadable(String text) {
        String asked = "reading \"" + text + "\"";
        return COMMA.matcher(text).find()
                ? new Refused(
                        asked,
                        "it has a comma",
                        "write decimals with a point: " + COMMA.matcher(text).replaceAll("."))
                : new Refused(
                        asked, "it does not begin with a number", "write it as 47.4 or 31 lbf·ft");
    }

    /** The same in that unit, where none was written. */
    public Measured orIn(@Nullable String otherwise) {
        return unit == null ? new Measured(value, otherwise) : this;
    }

    /** A length of time in minutes, where the unit is one of time or none; never rounded up. */
    public Optional<BigDecimal> minutes() {
        String written = unit == null ? "min" : unit.toLowerCase(Locale.ROOT);
        return switch (written) {
            case "min", "minute", "minutes", "mins" -> Optional.of(value);
            case "s", "sec", "second", "seconds" ->
                    Optional.of(value.divide(SIXTY, PLACES, RoundingMode.DOWN));
            case "h", "hour", "hours" -> Optional.of(value.multiply(SIXTY));
            default -> Optional.empty();
        };
    }

    /** The unit, if it is one that the program knows. */
    Optional<Unit> knownUnit() {
        return Optional.ofNullable(unit).flatMap(Units::parse);
    }

    /** Whether its unit is that one, however the two are spelt. */
    public boolean hasUnit(@Nullable String other) {
        Optional<Unit> known = Optional.ofNullable(other).flatMap(Units::parse);
        return known.isPresent() ? known.equals(knownUnit()) : Objects.equals(unit, other);
    }

    @Override
    public String toString() {
        return value.toPlainString() + (unit == null ? "" : " " + unit);
    }
}
