package counterbench.acts.bench;

import counterbench.acts.JobState;
import counterbench.campaign.Step;
import counterbench.procedure.Mark;
import counterbench.procedure.rules.StepMarks;
import java.util.List;
import java.util.Optional;

/**
 * How far the procedure has come on one vehicle.
 *
 * @param steps those that apply to the vehicle, in the order of the pack
 */
public record Progress(List<StepProgress> steps) {
    public Progress {
        steps = List.copyOf(steps);
    }

    /** That of a job; no steps where no pack of its campaign is loaded. */
    public static Progress of(JobState job) {
        return new Progress(job.steps().stream().map(step -> of(job, step)).toList());
    }

    static StepProgress of(JobState job, Step step) {
        List<Mark> marks =
                job.file().marks().stream().filter(mark -> mark.step().equals(step.id())).toList();
        return new StepProgress(step, new StepMarks(marks));
    }

    /** The step of that name, if it applies. */
    public Optional<StepProgress> step(String id) {
        return steps.stream().filter(step -> step.step().id().equals(id)).findFirst();
    }

    /** Steps that are not complete. */
    public List<StepProgress> open() {
        return steps.stream().filter(step -> !step.isComplete()).toList();
    }

    /**
     * The step to do next: the first open one of which all that come first are complete, or where
     * none is so, the first open one.
     */
    public Optional<StepProgress> next() {
        List<StepProgress> open = open();
        return open.stream()
                .filter(step -> waitingFor(step.step()).isEmpty())
                .findFirst()
                .or(() -> open.stream().findFirst());
    }

    /** Names of the steps that come before a step and are not complete. */
    public List<String> waitingFor(Step step) {
        return step.after().stream()
                .filter(id -> step(id).filter(before -> !before.isComplete()).isPresent())
                .toList();
    }
}
