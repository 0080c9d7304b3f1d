package counterbench.shell.counter;

import counterbench.acts.Act;
import counterbench.acts.IssuePart;
import counterbench.acts.Stamp;
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

/** Hands loose parts to a job. */
public final class PartIssueCommand extends ActCommand {
    public PartIssueCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("part issue", Group.PARTS_COUNTER, "Hand loose parts to a job")
                .takes(
                        CounterOptions.PART.completedBy(names.parts()),
                        CounterOptions.QUANTITY,
                        CounterOptions.JOB.completedBy(names.openJobs()),
                        CounterOptions.LOT)
                .example("part issue HB-3003 1 N-155")
                .example("part issue HB-3003 1 N-155 --lot R-93")
                .note(
                        "Without --lot, the lot in date that expires first is taken. An expired"
                                + " lot is only handed out where --lot names it.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new IssuePart(
                Scanned.part(in, site),
                in.get(CounterOptions.QUANTITY),
                Scanned.job(in, site, in.get(CounterOptions.JOB)),
                Scanned.lot(in, site),
                stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return Told.part(recorded) + " issued to job " + recorded.facts().get(0).text("job");
    }
}
