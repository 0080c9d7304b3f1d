package counterbench.shell.bench;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.bench.MarkStep;
import counterbench.acts.bench.Measured;
import counterbench.acts.bench.Progress;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Argument;
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

/** Mark a step as done, with what was read. */
public final class MarkCommand extends ActCommand {
    private static final Argument<String> STEP =
            Argument.of("STEP", Readings.TEXT, "the step's name in the pack");
    private static final Argument<String> READING =
            Argument.of(
                            "READING",
                            Readings.TEXT,
                            "what was read, with its unit: 47.4, 31 lbf·ft, 4.5 min; of several"
                                    + " fasteners one after the other")
                    .asOptional()
                    .asRepeatable();
    private static final Option<Long> FASTENER =
            Option.of(
                    "fastener",
                    "NUMBER",
                    Readings.WHOLE_NUMBER,
                    "the first fastener that is read; the first without a reading unless said");
    private static final Option<String> WITH =
            Option.of("with", "INSTRUMENT", Readings.TEXT, "what it was read with");

    public MarkCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("mark", Group.BENCH, "Mark a step as done, with what was read")
                .takes(
                        BenchOptions.JOB.completedBy(names.openJobs()),
                        STEP.completedBy(names.stepsOfJob()),
                        READING,
                        FASTENER.completedBy(names.fastenersOfStep()),
                        WITH.completedBy(names.instruments()))
                .example("mark N-169 cold")
                .example("mark N-169 relief 4.5 min")
                .example("mark N-169 mount 47.4 46.8 47.1 --with TW-1")
                .example("mark N-169 mount 34.6 lbf·ft --fastener 2 --with TW-1")
                .note(
                        "A number without a unit is in the unit of the instrument that --with names,"
                                + " or else in the step's. A step may be marked again; the latest"
                                + " reading counts, and none is lost. What lies outside its limits"
                                + " is recorded as it was read, and said at once.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        List<Measured> readings = Measured.rowOf(in.all(READING));
        return new MarkStep(
                BenchOptions.job(in, site),
                in.get(STEP),
                readings,
                in.find(FASTENER).orElse(null),
                in.find(WITH).orElse(null),
                stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        String job = HardwareTold.job(recorded);
        String read =
                Progress.of(recorded.after().job(job))
                        .step(in.get(STEP))
                        .map(step -> step.told(recorded.facts()))
                        .orElse("");
        return "step " + in.get(STEP) + " of job " + job + " marked" + read;
    }
}
