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

/** Scrap a part of the bench. */
public final class ScrapCommand extends ActCommand {
    public ScrapCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("scrap", Group.BENCH, "Scrap a part of the bench that is damaged")
                .takes(
                        BenchOptions.JOB.completedBy(names.openJobs()),
                        BenchOptions.PART.completedBy(names.partsOnBench()),
                        BenchOptions.QUANTITY,
                        BenchOptions.KIT.completedBy(names.kitsOfJob()),
                        BenchOptions.LOT,
                        BenchOptions.REASON)
                .example("scrap N-169 HB-3013 --reason \"fell into the sump\"")
                .note(
                        "For kits and loose parts on the shelf there are kit scrap and part scrap; for what is on the vehicle, take-off.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new TakeFromBench(
                TakeFromBench.End.SCRAPPED,
                BenchOptions.hardware(in, site),
                in.find(BenchOptions.REASON).orElse(null),
                stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return HardwareTold.goods(recorded) + " of job " + HardwareTold.job(recorded) + " scrapped";
    }
}
