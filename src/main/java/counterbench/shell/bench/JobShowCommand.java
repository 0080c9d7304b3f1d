package counterbench.shell.bench;

import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.bench.JobPage;
import counterbench.acts.store.ReadSituation;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Options;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.acts.LiveNames;
import java.util.function.Supplier;

/** Shows how a job stands. */
public final class JobShowCommand extends BaseCommand {
    private final Supplier<Store> store;
    private final SiteChoice sites;

    public JobShowCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)));
        this.store = store;
        this.sites = sites;
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("job show", Group.BENCH, "Show how a job stands and what it lacks")
                .takes(
                        BenchOptions.JOB.completedBy(names.jobs()),
                        Options.SITE.completedBy(names.sites()))
                .example("job show N-169")
                .note(
                        "An open job is judged as if it were completed now; job sheet has its whole"
                                + " procedure.");
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        String job = BenchOptions.job(in, site);
        Situation situation = new ReadSituation(store.get()).latest(site, in.now(), Named.job(job));
        situation.job(job);
        in.print("job " + job + " of site " + site.site());
        Blocks.show(in, JobPage.summary(situation, job));
        return Status.DONE;
    }
}
