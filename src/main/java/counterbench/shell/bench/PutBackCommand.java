package counterbench.shell.bench;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.bench.PutBackKit;
import counterbench.acts.bench.TakeFromBench;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import counterbench.shell.counter.Scanned;
import java.util.function.Supplier;

/** Put back what was not needed. */
public final class PutBackCommand extends ActCommand {
    private static final Argument<String> PART = BenchOptions.PART.asOptional();

    public PutBackCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("put-back", Group.BENCH, "Put what was not needed back from the bench")
                .takes(
                        BenchOptions.JOB.completedBy(names.openJobs()),
                        PART.completedBy(names.partsOnBench()),
                        BenchOptions.QUANTITY,
                        BenchOptions.KIT.completedBy(names.kitsOfJob()),
                        BenchOptions.LOT,
                        BenchOptions.REASON)
                .example("put-back N-169 HB-3013 2 --kit FP-1051")
                .example("put-back N-169 --kit FP-1051")
                .example("put-back N-169 HB-3003 1 --lot R-93")
                .note(
                        "What is from a kit goes back into its box, what came loose goes back into the store. With --kit and no part, all of the kit that lies on the bench goes back.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        if (in.has(PART)) {
            return new TakeFromBench(
                    TakeFromBench.End.PUT_BACK,
                    BenchOptions.hardware(in, site),
                    in.find(BenchOptions.REASON).orElse(null),
                    stamp);
        }
        String kit =
                in.find(BenchOptions.KIT)
                        .orElseThrow(
                                () ->
                                        in.wrong(
                                                "say which part is put back, or which kit with --kit"));
        return new PutBackKit(
                BenchOptions.job(in, site),
                Scanned.kit(in, site, kit),
                in.find(BenchOptions.REASON).orElse(null),
                stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        String goods =
                in.has(PART)
                        ? HardwareTold.goods(recorded)
                        : "all that was left of kit " + recorded.facts().get(0).text("kit");
        return goods + " put back from job " + HardwareTold.job(recorded);
    }
}
