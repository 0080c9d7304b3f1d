package counterbench.shell.bench;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.bench.TakeFromBench;
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

/** Fit a new part of the bench onto the vehicle. */
public final class FitCommand extends ActCommand {
    public FitCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("fit", Group.BENCH, "Record that a new part went onto the vehicle")
                .takes(
                        BenchOptions.JOB.completedBy(names.openJobs()),
                        BenchOptions.PART.completedBy(names.partsOnBench()),
                        BenchOptions.QUANTITY,
                        BenchOptions.KIT.completedBy(names.kitsOfJob()),
                        BenchOptions.LOT)
                .example("fit N-169 HB-3013 2")
                .example("fit N-169 HB-3015 4.5")
                .example("fit N-168 HB-5121 --kit RD-0544")
                .note(
                        "Only what lies on the bench of the job can be fitted; job show says what does. An old part that goes on again is a refit, and a plug goes on the core: plug.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new TakeFromBench(
                TakeFromBench.End.FITTED, BenchOptions.hardware(in, site), null, stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return HardwareTold.goods(recorded)
                + " fitted on job "
                + HardwareTold.job(recorded)
                + HardwareTold.onVehicle(recorded);
    }
}
