package counterbench.shell.bench;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.bench.TakeOff;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import java.util.function.Supplier;

/** Take a part off the vehicle again. */
public final class TakeOffCommand extends ActCommand {
    private static final Option<TakeOff.Was> WAS =
            Option.of(
                    "was",
                    "WAS",
                    Readings.oneOf(TakeOff.Was.class),
                    "new or reused, as it had been fitted");

    public TakeOffCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("take-off", Group.BENCH, "Record that a part came off the vehicle again")
                .takes(
                        BenchOptions.JOB.completedBy(names.openJobs()),
                        BenchOptions.PART.completedBy(names.partsOfJob()),
                        BenchOptions.QUANTITY,
                        WAS,
                        BenchOptions.KIT.completedBy(names.kitsOfJob()),
                        BenchOptions.LOT,
                        BenchOptions.REASON)
                .example("take-off N-169 HB-3013 1")
                .example("take-off N-169 HB-3013 1 --was reused --reason \"a new one is here\"")
                .note(
                        "A part that was fitted new is scrap once it comes off. --was is needed only where the vehicle has both new and old ones.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new TakeOff(
                BenchOptions.hardware(in, site),
                in.find(WAS).orElse(null),
                in.find(BenchOptions.REASON).orElse(null),
                stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        String was = "new".equals(recorded.facts().get(0).text("was")) ? "new, now scrap" : "old";
        return HardwareTold.goods(recorded)
                + " taken off on job "
                + HardwareTold.job(recorded)
                + " ("
                + was
                + ")"
                + HardwareTold.onVehicle(recorded);
    }
}
