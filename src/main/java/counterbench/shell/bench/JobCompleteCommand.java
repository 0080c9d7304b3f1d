package counterbench.shell.bench;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.bench.CompleteJob;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.job.Outcome;
import counterbench.judgement.Severity;
import counterbench.shared.Site;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import java.util.List;
import java.util.function.Supplier;

/** End a job. */
public final class JobCompleteCommand extends ActCommand {
    private static final Option<Outcome> OUTCOME =
            Option.of(
                    "outcome",
                    "OUTCOME",
                    Readings.oneOf(Outcome.class),
                    "completed (unless said otherwise), not-needed or abandoned");

    public JobCompleteCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("job complete", Group.BENCH, "End a job, and say what it leaves open")
                .takes(
                        BenchOptions.JOB.completedBy(names.openJobs()),
                        OUTCOME,
                        JobOpenCommand.WORK_ORDER,
                        JobOpenCommand.MILEAGE)
                .example("job complete N-169")
                .example("job complete N-170 --outcome not-needed")
                .note(
                        "Nothing is refused because something is missing: the job is recorded as it"
                                + " is, and every finding is said. Look before with job show. Whether"
                                + " the vehicle may be driven is for somebody who may judge that.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new CompleteJob(
                BenchOptions.job(in, site),
                in.find(OUTCOME).orElse(Outcome.COMPLETED),
                in.find(JobOpenCommand.WORK_ORDER).orElse(null),
                in.find(JobOpenCommand.MILEAGE).orElse(null),
                stamp);
    }

    @Override
    protected List<String> hints(RecordAct.Recorded recorded) {
        boolean lacking =
                recorded.raised().stream().anyMatch(f -> f.rule().severity() == Severity.STOP);
        boolean unfinished =
                !Outcome.COMPLETED.word().equals(recorded.facts().get(0).text("outcome"));
        return lacking || unfinished
                ? List.of(
                        (unfinished
                                        ? "if it goes on after all, or was the wrong job, take that"
                                                + " back: reverse "
                                        : "if it is not done, or was the wrong job, take that back:"
                                                + " reverse ")
                                + recorded.entry().number()
                                + " --reason TEXT")
                : List.of();
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        String job = HardwareTold.job(recorded);
        return switch (in.find(OUTCOME).orElse(Outcome.COMPLETED)) {
            case COMPLETED -> "job " + job + " completed";
            case NOT_NEEDED -> "job " + job + " closed as not needed";
            case ABANDONED -> "job " + job + " abandoned";
        };
    }
}
