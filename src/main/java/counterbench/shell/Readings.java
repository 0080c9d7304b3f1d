package counterbench.shell;

import counterbench.facts.Canonical;
import counterbench.shared.NearMatch;
import counterbench.shared.Quantity;
import counterbench.shared.Visible;
import counterbench.shared.WrittenTime;
import counterbench.shared.units.Weight;
import java.math.BigDecimal;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The kinds of values that command lines hold. */
public final class Readings {
    private static final Pattern DECIMAL = Pattern.compile("[+-]?[0-9]{1,15}(\\.[0-9]{1,6})?");
    private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]{1,15}");

    /** A name or short text: not empty, in one line, without control characters. */
    public static final Reading<String> TEXT = Readings::text;

    /** A whole number. */
    public static final Reading<Long> WHOLE_NUMBER =
            text -> Long.valueOf(matching(WHOLE, text, "is not a whole number; write it as 12"));

    /** An exact decimal, to six places. */
    public static final Reading<BigDecimal> EXACT =
            text -> new BigDecimal(matching(DECIMAL, text, "is not a number; write it as 12.5"));

    /** A quantity of a part, to three places. */
    public static final Reading<Quantity> QUANTITY = Readings::quantity;

    /** A weight in kilograms or pounds. */
    public static final Reading<Weight> WEIGHT =
            text ->
                    Weight.parse(text)
                            .orElseThrow(
                                    () ->
                                            new Unreadable(
                                                    "is not a weight above zero with its unit, kg or lb; write it as"
                                                            + " \"16.2 kg\" or \"35.7 lb\""));

    /** A calendar day. */
    public static final Reading<LocalDate> DAY = Readings::day;

    /** A calendar month. */
    public static final Reading<YearMonth> MONTH = Readings::month;

    /** A time, with an offset or local to the site. */
    public static final Reading<WrittenTime> TIME = Readings::time;

    /** A file or folder, whether it is there or not. */
    public static final Reading<Path> PATH = Readings::path;

    private Readings() {}

    /** One of an enum's constants, written in small letters with hyphens. */
    public static <E extends Enum<E>> Reading<E> oneOf(Class<E> type) {
        return new Choice<>(type);
    }

    /** What people type for a constant. */
    public static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String text(String text) {
        if (text.isBlank()) {
            throw new Unreadable("is empty; say something or leave it out");
        }
        if (!Visible.text(text).equals(text) || text.indexOf('\n') >= 0) {
            throw new Unreadable("holds a line end or a control character; leave it out");
        }
        return Canonical.normalised(text.strip());
    }

    private static String matching(Pattern form, String text, String otherwise) {
        String plain = text.strip();
        if (!form.matcher(plain).matches()) {
            throw new Unreadable(otherwise);
        }
        return plain;
    }

    private static Quantity quantity(String text) {
        BigDecimal amount = EXACT.read(text);
        if (amount.stripTrailingZeros().scale() > Quantity.SCALE) {
            throw new Unreadable("has more than three decimal places; round it");
        }
        return new Quantity(amount);
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeException e) {
            throw new Unreadable("is not a day; write it as 2026-03-05");
        }
    }

    private static YearMonth month(String text) {
        try {
            return YearMonth.parse(text.strip());
        } catch (DateTimeException e) {
            throw new Unreadable("is not a month; write it as 2026-03");
        }
    }

    private static WrittenTime time(String text) {
        return WrittenTime.of(text)
                .orElseThrow(
                        () ->
                                new Unreadable(
                                        "is not a time; write it as \"2026-03-05 14:20\", or with"
                                                + " an offset as 2026-03-05T14:20-06:00"));
    }

    private static Path path(String text) {
        try {
            return Path.of(text(text));
        } catch (InvalidPathException e) {
            throw new Unreadable("is not the name of a file");
        }
    }

    private record Choice<E extends Enum<E>>(Class<E> type) implements Reading<E> {
        @Override
        public E read(String text) {
            return constants()
                    .filter(e -> word(e).equals(text.strip()))
                    .findFirst()
                    .orElseThrow(() -> new Unreadable("is not one of them; " + proposal(text)));
        }

        private String proposal(String text) {
            Optional<String> near = NearMatch.of(text, words());
            return near.map(n -> "did you mean " + n + "? ").orElse("")
                    + "there are "
                    + String.join(", ", words());
        }

        @Override
        public List<String> words() {
            return constants().map(Readings::word).toList();
        }

        private Stream<E> constants() {
            return Stream.of(type.getEnumConstants());
        }
    }
}
