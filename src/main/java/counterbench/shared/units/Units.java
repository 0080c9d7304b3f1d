package counterbench.shared.units;

import static counterbench.shared.packed.PackedTable.cell;

import counterbench.shared.packed.PackedTable;
import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The units that the program knows, read once from {@code shared/units.csv}. */
public final class Units {
    private static final Pattern IGNORED = Pattern.compile("[\\s.·⋅∙•*\\u2010\\u2011-]");
    private static final List<Map<String, String>> ROWS = PackedTable.rows("units.csv");
    private static final List<Unit> ALL = ROWS.stream().map(Units::unit).toList();
    private static final Map<String, Unit> BY_SPELLING = bySpelling();

    private Units() {}

    /** Every unit, in the order of the table. */
    public static List<Unit> all() {
        return ALL;
    }

    /**
     * The unit of a usual spelling. Letter case, spaces, points and hyphens do not count, since no
     * two known units differ by them alone.
     */
    public static Optional<Unit> parse(String spelling) {
        Unit asInTable = BY_SPELLING.get(spelling);
        return Optional.ofNullable(
                asInTable == null ? BY_SPELLING.get(plain(spelling)) : asInTable);
    }

    /**
     * The unit of a spelling that the caller knows to be good.
     *
     * @throws IllegalArgumentException if it is not
     */
    public static Unit of(String spelling) {
        return parse(spelling)
                .orElseThrow(() -> new IllegalArgumentException("no such unit: " + spelling));
    }

    /**
     * Below, at or above zero as the first value is less than, equal to or more than the second;
     * exact.
     *
     * @throws IllegalArgumentException if the units measure different things
     */
    public static int compare(BigDecimal a, Unit unitOfA, BigDecimal b, Unit unitOfB) {
        unitOfA.requireSameMeasure(unitOfB);
        return unitOfA.toBase(a).compareTo(unitOfB.toBase(b));
    }

    private static Unit unit(Map<String, String> row) {
        return new Unit(
                cell(row, "unit"),
                Measure.of(cell(row, "measures")),
                new BigDecimal(cell(row, "factor")),
                new BigDecimal(cell(row, "offset")));
    }

    private static Map<String, Unit> bySpelling() {
        Map<String, Unit> found = new HashMap<>();
        for (int i = 0; i < ROWS.size(); i++) {
            Unit unit = ALL.get(i);
            Stream.of(cell(ROWS.get(i), "spellings").split("\\|"))
                    .forEach(
                            spelling -> {
                                // As it stands, too: it is looked up most, and soonest found.
                                add(found, spelling, unit);
                                add(found, plain(spelling), unit);
                            });
        }
        return Map.copyOf(found);
    }

    private static void add(Map<String, Unit> found, String spelling, Unit unit) {
        Unit other = found.putIfAbsent(spelling, unit);
        if (other != null && !other.equals(unit)) {
            throw new IllegalStateException(spelling + " is both " + other + " and " + unit);
        }
    }

    // The ordinal sign stands in for the degree sign on many keyboards; compatibility forms such as
    // one-character °C or ² become plain ones.
    private static String plain(String spelling) {
        String degrees = spelling.replace('º', '°');
        return Normalizer.normalize(degrees, Normalizer.Form.NFKC)
                .transform(text -> IGNORED.matcher(text).replaceAll(""))
                .toLowerCase(Locale.ROOT);
    }
}
