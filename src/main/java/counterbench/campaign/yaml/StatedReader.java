package counterbench.campaign.yaml;

import counterbench.shared.units.Measure;
import counterbench.shared.units.Stated;
import counterbench.shared.units.Unit;
import counterbench.shared.units.Units;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Reads numbers with units, such as {@code 41 N·m}. */
final class StatedReader {
    private static final Pattern NUMBER_AND_REST =
            Pattern.compile("([+-]?\\d{1,9}(?:\\.\\d{1,9})?)(?![\\d.,])\\s*(.*)");

    private StatedReader() {}

    /**
     * @param usual the unit of a number that bears none; null if it must bear one
     * @param wanted what the unit must measure; null for anything
     */
    static Optional<Stated> read(Value value, @Nullable Unit usual, @Nullable Measure wanted) {
        Optional<Matcher> parts = parts(value);
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal number = new BigDecimal(parts.get().group(1));
        String rest = parts.get().group(2);
        if (rest.isEmpty() && usual == null) {
            value.refuse("it has no unit", "write one behind the number: " + symbols(wanted));
            return Optional.empty();
        }
        Optional<Unit> unit =
                rest.isEmpty() ? Optional.ofNullable(usual) : known(value, rest, wanted);
        return unit.map(u -> new Stated(number, u));
    }

    /** A number and what follows it. */
    static Optional<Matcher> parts(Value value) {
        Optional<Matcher> parts =
                value.scalar("a number").map(NUMBER_AND_REST::matcher).filter(Matcher::matches);
        if (parts.isEmpty() && value.isPlain()) {
            value.refuse(
                    "it does not begin with a plain number",
                    "write digits, with a point before decimals, then the unit");
        }
        return parts;
    }

    /** A unit on its own, under a key such as {@code unit}. */
    static Optional<Unit> unit(Value value, @Nullable Measure wanted) {
        return value.word().flatMap(word -> known(value, word, wanted));
    }

    private static Optional<Unit> known(Value value, String spelling, @Nullable Measure wanted) {
        Optional<Unit> unit = Units.parse(spelling);
        if (unit.isEmpty()) {
            value.refuse(
                    Value.quoted(spelling) + " is no unit known here",
                    "units are " + symbols(wanted));
        } else if (wanted != null && unit.get().measures() != wanted) {
            value.refuse(
                    "%s measures %s, not %s"
                            .formatted(unit.get(), unit.get().measures().words(), wanted.words()),
                    "write a unit of %s: %s".formatted(wanted.words(), symbols(wanted)));
            return Optional.empty();
        }
        return unit;
    }

    private static String symbols(@Nullable Measure wanted) {
        return Units.all().stream()
                .filter(u -> wanted == null || u.measures() == wanted)
                .filter(u -> wanted != null || u.measures() != Measure.ENERGY)
                .map(Unit::symbol)
                .collect(Collectors.joining(", "));
    }
}
