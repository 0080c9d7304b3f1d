package counterbench.acts.bench;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.JobState;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.campaign.Pack;
import counterbench.campaign.Step;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.procedure.Instrument;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Marks a step as done, with what was read.
 *
 * @param readings what was read: none for a plain step, one for each fastener of a torque step
 * @param fastener the first of them; null for the first that has no reading
 * @param instrument what it was read with, if it is said
 */
public record MarkStep(
        String job,
        String step,
        List<Measured> readings,
        @Nullable Long fastener,
        @Nullable String instrument,
        Stamp stamp)
        implements Act {
    private static final Set<Rule> OF_READINGS =
            EnumSet.of(
                    Rule.TORQUE_OUTSIDE,
                    Rule.TORQUE_BORDERLINE,
                    Rule.READING_OUTSIDE,
                    Rule.WAIT_SHORT);

    public MarkStep {
        readings = List.copyOf(readings);
    }

    @Override
    public FactKind makes() {
        return FactKind.MARKS;
    }

    @Override
    public Named named() {
        return Named.job(job);
    }

    /** A reading that is outside its limits once more is told once more. */
    @Override
    public boolean tellsAgain(Finding finding) {
        Subject subject = finding.subject();
        return OF_READINGS.contains(finding.rule())
                && subject.kind() == SubjectKind.JOB
                && subject.name().equals(job)
                && step.equals(subject.step());
    }

    @Override
    public Decision decide(Situation situation) {
        JobState state = situation.job(job);
        Workplace place =
                Workplace.of(situation, state, stamp, "step \"" + step + "\" of job " + job);
        StepProgress progress = Progress.of(state, found(place));
        Optional<Instrument> known =
                Optional.ofNullable(instrument)
                        .map(name -> situation.terms().instruments().get(name));
        StepRows rows = new StepRows(place, progress, known.map(Instrument::unit));
        List<FactRow> facts =
                rows.of(readings, fastener).stream()
                        .map(
                                row ->
                                        row.with("job", job)
                                                .with("step", step)
                                                .with("instrument", instrument))
                        .toList();
        List<String> remarks = new ArrayList<>();
        sayWhatComesFirst(state, progress.step(), remarks);
        rows.before().ifPresent(remarks::add);
        sayLikeInstrument(situation, known.isPresent(), remarks);
        return new Decision(facts, remarks);
    }

    private Step found(Workplace place) {
        Pack pack =
                place.job()
                        .pack()
                        .orElseThrow(
                                () ->
                                        place.refused(
                                                "no pack of its campaign is loaded",
                                                "load it first: campaign load FILE"));
        return pack.step(step).orElseThrow(() -> unknown(place, pack));
    }

    private Refused unknown(Workplace place, Pack pack) {
        List<String> ids = pack.procedure().stream().map(Step::id).toList();
        return place.refused(
                "revision " + pack.revision() + " of " + pack.campaign() + " has no such step",
                NearMatch.of(step, ids)
                        .map(near -> "did you mean " + near + "?")
                        .orElse("its steps are " + String.join(", ", ids)));
    }

    private static void sayWhatComesFirst(JobState state, Step step, List<String> remarks) {
        List<String> first = Progress.of(state).waitingFor(step);
        if (!first.isEmpty()) {
            remarks.add(
                    "step "
                            + String.join(" and step ", first)
                            + (first.size() == 1 ? " comes" : " come")
                            + " before it and is not marked yet");
        }
    }

    private void sayLikeInstrument(Situation situation, boolean known, List<String> remarks) {
        if (instrument != null && !known) {
            NearMatch.of(instrument, situation.terms().instruments().keySet())
                    .ifPresent(
                            near ->
                                    remarks.add(
                                            "no instrument "
                                                    + instrument
                                                    + " is known; if "
                                                    + near
                                                    + " was meant, reverse this and mark it anew"));
        }
    }
}
