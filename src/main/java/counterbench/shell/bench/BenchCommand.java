package counterbench.shell.bench;

import counterbench.acts.scan.Word;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.acts.LiveNames;
import java.util.function.Supplier;

/** The loop in which a technician scans what is done on a job. */
public final class BenchCommand extends BaseCommand {
    private static final Option<Boolean> AS_NEW =
            Option.flag("as-new", "take a batch as new, even if the same one was taken before");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public BenchCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)));
        this.store = store;
        this.sites = sites;
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("bench", Group.BENCH, "Scan or type what is done on a job as it is done")
                .takes(
                        BenchOptions.JOB.completedBy(names.openJobs()),
                        AS_NEW,
                        Options.SITE.completedBy(names.sites()))
                .example("bench N-169")
                .note(
                        "It says the next step with its value, and takes what comes: a kit's label"
                                + " issues or confirms the kit, a part's label fits one of it, a"
                                + " number is the reading that the step waits for, with its unit if"
                                + " it is another one (31 lbf·ft), an empty line marks a plain step,"
                                + " the name of a step marks or chooses it. Its words are "
                                + String.join(", ", Word.all())
                                + "; help explains them.")
                .note(
                        "What is acknowledged is recorded. However the loop ends, opened again it"
                                + " stands at the same place. A step that is marked already is not"
                                + " marked again by a scan: the same reading is known, another one is"
                                + " refused; again STEP reads it anew.")
                .note(
                        "From a pipe it reports line by line and stops at the first line that it"
                                + " refuses. The same batch given again adds only what is new:"
                                + " lines that made an entry are known by all lines up to them.");
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        in.person();
        String job = BenchOptions.job(in, site);
        return new BenchLoop(in, store.get(), site, job, in.has(AS_NEW)).run();
    }
}
