package counterbench.acts.bench;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.JobState;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.job.Job;
import counterbench.job.Outcome;
import counterbench.judgement.Finding;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Refused;
import counterbench.stock.Issue;
import counterbench.stock.Use;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Ends a job. What is missing then is no hindrance: it is recorded as it is, and every finding that
 * it leaves is said.
 *
 * @param workOrder the workshop's own number, where it was not said before
 * @param mileage what the vehicle shows, where it was not said before
 */
public record CompleteJob(
        String job,
        Outcome outcome,
        @Nullable String workOrder,
        @Nullable Long mileage,
        Stamp stamp)
        implements Act {
    @Override
    public FactKind makes() {
        return FactKind.JOBS;
    }

    @Override
    public Named named() {
        return Named.job(job);
    }

    /** What was told while the job was open is told once more, as it is now for good. */
    @Override
    public boolean tellsAgain(Finding finding) {
        return finding.subject().kind() == SubjectKind.JOB && finding.subject().name().equals(job);
    }

    @Override
    public Decision decide(Situation situation) {
        JobState state = situation.job(job);
        Workplace place =
                Workplace.of(situation, state, stamp, "end of job " + job + ", " + outcome.word());
        latestAct(state)
                .filter(last -> last.isAfter(stamp.at()))
                .ifPresent(last -> refuseBefore(place, last));
        Job known = state.job();
        return new Decision(
                List.of(
                        FactRow.of(FactKind.JOBS)
                                .with("job", job)
                                .with("campaign", known.campaign())
                                .with("vin", known.vin())
                                .with("opened_at", known.openedAt())
                                .with("completed_at", stamp.at())
                                .with("outcome", outcome.word())
                                .with("work_order", workOrder)
                                .with("mileage", mileage)),
                List.of());
    }

    private static Optional<Instant> latestAct(JobState state) {
        return Stream.of(
                        state.file().uses().stream().map(Use::at),
                        state.file().issues().stream().map(Issue::at),
                        state.file().marks().stream().map(mark -> mark.at()))
                .flatMap(times -> times)
                .max(Instant::compareTo);
    }

    private static void refuseBefore(Workplace place, Instant last) {
        throw new Refused(
                place.asked(),
                "something was done on it later, at " + place.site().wallTime(last),
                "say with --at when it ended, or leave --at out");
    }
}
