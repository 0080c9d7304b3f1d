package counterbench.acts.scan;

import counterbench.acts.JobState;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.acts.bench.Progress;
import counterbench.acts.bench.StepProgress;
import counterbench.campaign.PartUnit;
import counterbench.campaign.Step;
import counterbench.procedure.Instrument;
import counterbench.procedure.Mark;
import counterbench.shared.units.Unit;
import counterbench.shared.units.Units;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A job at the bench as it stands, with what is kept in mind, at the time of a scan. */
public record Bench(Situation situation, String name, Mind mind, Stamp stamp) {
    /** The job. */
    public JobState job() {
        return situation.job(name);
    }

    /** What a part is counted or measured in. */
    PartUnit partUnit(String part) {
        return situation.terms().partUnits().getOrDefault(part, PartUnit.EACH);
    }

    /** How far its procedure has come. */
    public Progress progress() {
        return Progress.of(job());
    }

    /** The step that readings go to: the one that was named, or else the next. */
    public Optional<StepProgress> current() {
        Progress progress = progress();
        return mind.focused().flatMap(focus -> progress.step(focus.step())).or(progress::next);
    }

    /**
     * The instrument with which a step is read: of those that suit its unit the one that was
     * scanned last, or else that of the job's latest mark.
     */
    public Optional<Instrument> instrumentFor(Step step) {
        Optional<Unit> wanted = unit(step.unit());
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        return Stream.concat(mind.instruments().stream(), used())
                .map(name -> situation.terms().instruments().get(name))
                .filter(Objects::nonNull)
                .filter(
                        instrument ->
                                unit(instrument.unit())
                                        .filter(wanted.get()::comparesWith)
                                        .isPresent())
                .findFirst();
    }

    /** Whether an instrument is in calibration on the day of the scan. */
    boolean isInCalibration(Instrument instrument) {
        return instrument.isInCalibration(today());
    }

    /** Why nothing should be read with an instrument today; empty where it is in calibration. */
    Optional<String> warning(Instrument instrument) {
        if (isInCalibration(instrument)) {
            return Optional.empty();
        }
        String because =
                instrument
                        .calibrationOn(today())
                        .map(last -> " was due for calibration on " + last.dueOn())
                        .orElse(" was not calibrated yet, as far as its sheets say");
        return Optional.of(
                "instrument "
                        + instrument.instrument()
                        + because
                        + "; read with another one (with INSTRUMENT), or have it checked first");
    }

    private LocalDate today() {
        return situation.site().dayOf(stamp.at());
    }

    private Stream<String> used() {
        List<Mark> marks = job().file().marks();
        return marks.stream()
                .sorted(Comparator.comparing(Mark::at).thenComparing(Mark::address).reversed())
                .map(Mark::instrument)
                .filter(Objects::nonNull);
    }

    private static Optional<Unit> unit(@Nullable String unit) {
        return Optional.ofNullable(unit).flatMap(Units::parse);
    }
}
