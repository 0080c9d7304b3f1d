package counterbench.acts.bench;

import counterbench.campaign.Step;
import counterbench.campaign.StepKind;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.procedure.Mark;
import counterbench.shared.units.Measure;
import counterbench.shared.units.Unit;
import counterbench.shared.units.Units;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The marks that readings of a step make. A bare number is in the unit of the instrument, where
 * that is known.
 */
final class StepRows {
    private final Workplace place;
    private final StepProgress progress;
    private final Step step;
    private final Optional<String> instrumentUnit;
    private final List<Mark> before = new ArrayList<>();

    StepRows(Workplace place, StepProgress progress, Optional<String> instrumentUnit) {
        this.place = place;
        this.progress = progress;
        this.step = progress.step();
        this.instrumentUnit = instrumentUnit.filter(unit -> compares(unit, step.unit()));
    }

    private static boolean compares(String unit, @Nullable String other) {
        Optional<Unit> wanted = Optional.ofNullable(other).flatMap(Units::parse);
        return Units.parse(unit).flatMap(u -> wanted.filter(u::comparesWith)).isPresent();
    }

    List<FactRow> of(List<Measured> readings, @Nullable Long fastener) {
        if (fastener != null && step.kind() != StepKind.TORQUE) {
            throw place.refused("the step has no fasteners", "leave --fastener out");
        }
        return switch (step.kind()) {
            case SAFETY, SIGN -> plain(readings);
            case WAIT -> List.of(row().with("minutes", minutes(one(readings, "how long it was"))));
            case READING -> reading(one(readings, "what was read"));
            case TORQUE -> torques(readings, fastener);
        };
    }

    /** What the readings take the place of, if anything. */
    Optional<String> before() {
        if (before.isEmpty()) {
            return Optional.empty();
        }
        String earlier = ReadingWords.of(step, before);
        return Optional.of(
                (earlier.isEmpty() ? "it was marked" : "it read " + earlier)
                        + " before, at "
                        + place.site().wallTime(before.get(0).at())
                        + "; the latest counts");
    }

    private FactRow row() {
        return place.stamp().row(FactKind.MARKS);
    }

    private List<FactRow> plain(List<Measured> readings) {
        if (!readings.isEmpty()) {
            throw place.refused(
                    "there is nothing to read for it", "leave \"" + readings.get(0) + "\" out");
        }
        before.addAll(progress.latest());
        return List.of(row());
    }

    private Measured one(List<Measured> readings, String what) {
        if (readings.size() != 1) {
            throw place.refused(
                    readings.isEmpty()
                            ? "it does not say " + what
                            : "it takes one value, not " + readings.size(),
                    "say " + what + asked());
        }
        before.addAll(progress.latest());
        return readings.get(0);
    }

    private String asked() {
        String unit = step.kind() == StepKind.WAIT ? "min" : instrumentUnit.orElse(step.unit());
        return unit == null ? "" : ", such as 12.5 " + unit;
    }

    private BigDecimal minutes(Measured said) {
        return said.minutes()
                .filter(minutes -> minutes.signum() > 0)
                .orElseThrow(
                        () ->
                                place.refused(
                                        "\"" + said + "\" is no length of time",
                                        "say it in minutes, such as 4.5 min"));
    }

    private List<FactRow> reading(Measured said) {
        return List.of(valued(said));
    }

    private FactRow valued(Measured said) {
        Measured full = said.orIn(instrumentUnit.orElse(null));
        refuseOtherMeasure(full);
        String unit = full.knownUnit().map(Unit::symbol).orElse(full.unit());
        return row().with("value", full.value()).with("unit", unit);
    }

    private void refuseOtherMeasure(Measured said) {
        Optional<Unit> wanted = Optional.ofNullable(step.unit()).flatMap(Units::parse);
        if (said.unit() != null && wanted.isPresent()) {
            Unit unit =
                    said.knownUnit()
                            .orElseThrow(
                                    () ->
                                            place.refused(
                                                    "\""
                                                            + said.unit()
                                                            + "\" is no unit that is known",
                                                    "write " + step.unit()));
            if (!unit.comparesWith(wanted.get())) {
                throw place.refused(
                        unit
                                + " measures "
                                + unit.measures().words()
                                + ", and the step is read in "
                                + step.unit(),
                        "write " + step.unit() + " or a unit of the same kind");
            }
        }
        if (said.value().signum() < 0
                && !wanted.map(Unit::measures).map(Measure::mayBeNegative).orElse(true)) {
            throw place.refused("\"" + said + "\" is below zero", "say what the instrument showed");
        }
    }

    private List<FactRow> torques(List<Measured> readings, @Nullable Long said) {
        if (readings.isEmpty()) {
            throw place.refused("it does not say what was read", "say what was read" + asked());
        }
        long first = said == null ? firstUnread() : said;
        long last = first + readings.size() - 1;
        if (first < 1 || last > step.fasteners()) {
            throw place.refused(
                    "it has "
                            + step.fasteners()
                            + (step.fasteners() == 1 ? " fastener, and " : " fasteners, and ")
                            + tooMany(readings.size(), first),
                    "give one reading for each that is left, or say which with --fastener");
        }
        List<FactRow> rows = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            long fastener = first + i;
            Optional.ofNullable(progress.marks().latestByFastener().get((int) fastener))
                    .ifPresent(before::add);
            rows.add(valued(readings.get(i)).with("fastener", fastener));
        }
        return rows;
    }

    private static String tooMany(int readings, long first) {
        return readings == 1 || first < 1
                ? "fastener " + first + " was said"
                : readings + " readings from fastener " + first + " on were said";
    }

    private long firstUnread() {
        if (step.fasteners() == 1) {
            return 1;
        }
        return progress.nextFastener()
                .orElseThrow(
                        () ->
                                place.refused(
                                        "all its fasteners are read: "
                                                + progress.latest().stream()
                                                        .map(m -> ReadingWords.of(step, List.of(m)))
                                                        .collect(Collectors.joining(", ")),
                                        "to read one again, say which with --fastener"));
    }
}
