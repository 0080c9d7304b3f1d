package counterbench.acts.bench;

import counterbench.campaign.Step;
import counterbench.facts.FactRow;
import counterbench.procedure.Mark;
import counterbench.shared.Minutes;
import counterbench.shared.units.Unit;
import counterbench.shared.units.Units;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Readings as people write them, the unit once where it is the same. */
final class ReadingWords {
    private static final int DIGITS = 4;

    private final Step step;
    private final List<String> words = new ArrayList<>();
    private String unit = "";

    private ReadingWords(Step step) {
        this.step = step;
    }

    /**
     * Of marks: {@code 47.4 46.8 N·m}, {@code 31 lbf·ft (42.03 N·m)}; empty where none was read.
     */
    static String of(Step step, List<Mark> marks) {
        ReadingWords words = new ReadingWords(step);
        marks.forEach(mark -> words.add(mark.value(), mark.unit(), mark.minutes()));
        return words.all();
    }

    /** Of rows that make marks. */
    static String ofRows(Step step, List<FactRow> rows) {
        ReadingWords words = new ReadingWords(step);
        rows.forEach(
                row -> words.add(row.decimal("value"), row.text("unit"), row.decimal("minutes")));
        return words.all();
    }

    private void add(
            @Nullable BigDecimal value, @Nullable String said, @Nullable BigDecimal minutes) {
        if (value != null) {
            String own = Objects.requireNonNullElse(step.unit(), "");
            add(value, Objects.requireNonNullElse(said, own));
        } else if (minutes != null) {
            endUnit();
            words.add(Minutes.read(minutes));
        }
    }

    private void add(BigDecimal number, String own) {
        if (!own.equals(unit)) {
            endUnit();
        }
        unit = own;
        words.add(plain(number) + inStepUnit(number, own).map(in -> " " + own + in).orElse(""));
        if (inStepUnit(number, own).isPresent()) {
            unit = "";
        }
    }

    /** A reading in another unit than the step's says what that is in the step's, rounded. */
    private Optional<String> inStepUnit(BigDecimal number, String own) {
        Optional<Unit> from = Units.parse(own);
        Optional<Unit> to = Optional.ofNullable(step.unit()).flatMap(Units::parse);
        return from.isEmpty() || to.isEmpty() || from.get().equals(to.get())
                ? Optional.empty()
                : Optional.of(
                        " ("
                                + plain(from.get().convert(number, to.get(), DIGITS))
                                + " "
                                + to.get()
                                + ")");
    }

    private void endUnit() {
        if (!unit.isEmpty()) {
            words.add(unit);
        }
        unit = "";
    }

    private String all() {
        endUnit();
        return String.join(" ", words);
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
