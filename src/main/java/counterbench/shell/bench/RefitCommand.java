package counterbench.shell.bench;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.bench.RefitPart;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import java.util.function.Supplier;

/** Fit an old part again. */
public final class RefitCommand extends ActCommand {
    public RefitCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of(
                        "refit", Group.BENCH, "Record that an old part went onto the vehicle again")
                .takes(
                        BenchOptions.JOB.completedBy(names.openJobs()),
                        BenchOptions.PART.completedBy(names.partsOfJob()),
                        BenchOptions.QUANTITY,
                        BenchOptions.REASON)
                .example("refit N-169 HB-3013 1 --reason \"one short, supplier called\"")
                .note(
                        "It is recorded as it was, even where the part serves once; the finding that it raises is said at once. The reason is asked where it is not said. The new part that was spared stays on the bench until it is put back, scrapped or fitted.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new RefitPart(BenchOptions.hardware(in, site), Reason.of(in), stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return HardwareTold.goods(recorded)
                + " refitted old on job "
                + HardwareTold.job(recorded)
                + HardwareTold.onVehicle(recorded);
    }
}
