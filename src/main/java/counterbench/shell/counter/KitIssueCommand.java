package counterbench.shell.counter;

import counterbench.acts.Act;
import counterbench.acts.IssueKit;
import counterbench.acts.Stamp;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import java.util.function.Supplier;

/** Hands a kit to a job. */
public final class KitIssueCommand extends ActCommand {
    private static final Argument<String> KIT =
            Argument.of("KIT", Readings.TEXT, "the kit's serial");
    private static final Argument<String> JOB = Argument.of("JOB", Readings.TEXT, "the job");

    public KitIssueCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("kit issue", Group.PARTS_COUNTER, "Hand a kit to a job")
                        .takes(KIT, JOB)
                        .example("kit issue FP-1012 N-107"),
                store,
                sites);
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new IssueKit(in.get(KIT), in.get(JOB), stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return "kit " + in.get(KIT) + " issued to job " + in.get(JOB);
    }
}
