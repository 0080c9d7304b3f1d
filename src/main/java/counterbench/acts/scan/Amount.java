package counterbench.acts.scan;

import counterbench.campaign.PartUnit;
import counterbench.shared.Quantity;
import counterbench.shared.Refused;
import counterbench.shared.Visible;
import counterbench.shared.units.Measure;
import counterbench.shared.units.Unit;
import counterbench.shared.units.Units;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * How much of a part is said behind it: {@code 2}, {@code 2x}, {@code 4.5mL}, {@code 4.5 mL}.
 *
 * @param unit the unit of volume or mass behind the number; null where there is none
 * @param rest the words behind it
 */
record Amount(Quantity quantity, @Nullable Unit unit, List<String> rest) {
    private static final Pattern FORM = Pattern.compile("([0-9]{1,9}(?:\\.[0-9]{1,3})?)([^0-9.]*)");
    private static final String TIMES = "x";

    /** The longest unit has two words: {@code fl oz}. */
    private static final int MOST_WORDS = 2;

    /** What the words begin with; nothing where that is no quantity. */
    static Optional<Amount> of(List<String> words) {
        if (words.isEmpty()) {
            return Optional.empty();
        }
        Matcher parts = FORM.matcher(words.get(0));
        if (!parts.matches()) {
            return Optional.empty();
        }
        Quantity quantity = new Quantity(new BigDecimal(parts.group(1)));
        List<String> behind = words.subList(1, words.size());
        String close = parts.group(2);
        if (close.equals(TIMES)) {
            return Optional.of(new Amount(quantity, null, behind));
        }
        for (int n = Math.min(MOST_WORDS, behind.size()); n >= 0; n--) {
            Optional<Unit> unit = goods(close + String.join(" ", behind.subList(0, n)));
            if (unit.isPresent()) {
                return Optional.of(
                        new Amount(quantity, unit.get(), behind.subList(n, behind.size())));
            }
        }
        return close.isEmpty() ? Optional.of(new Amount(quantity, null, behind)) : Optional.empty();
    }

    private static Optional<Unit> goods(String text) {
        return Units.parse(text)
                .filter(
                        unit ->
                                unit.measures() == Measure.VOLUME
                                        || unit.measures() == Measure.MASS);
    }

    /**
     * So much of a part.
     *
     * @throws Refused if the part is counted, or measured in another unit
     */
    Quantity of(String part, PartUnit wanted) {
        if (unit == null || Units.parse(wanted.word()).filter(unit::equals).isPresent()) {
            return quantity;
        }
        throw new Refused(
                "quantity \"" + quantity + " " + unit + "\" of " + part,
                wanted.isMeasured()
                        ? "the part is measured in " + wanted.word()
                        : "the part is counted in pieces",
                wanted.isMeasured()
                        ? "say how many " + wanted.word() + " it is"
                        : "say how many pieces");
    }

    /**
     * So much of a part, where nothing else may be said; null where nothing is.
     *
     * @throws Refused if anything else is
     */
    static @Nullable Quantity alone(String part, PartUnit wanted, List<String> behind) {
        if (behind.isEmpty()) {
            return null;
        }
        Amount said = of(behind).orElseThrow(() -> stray(part, behind));
        if (!said.rest.isEmpty()) {
            throw stray(part, said.rest);
        }
        return said.of(part, wanted);
    }

    /** Words behind a part that do not say how much it is. */
    static Refused stray(String part, List<String> words) {
        return new Refused(
                "\"" + Visible.text(String.join(" ", words)) + "\" behind " + part,
                "only how much it is can be said there",
                "leave it out, or begin with what was done: refit, take-off, put-back, scrap");
    }
}
