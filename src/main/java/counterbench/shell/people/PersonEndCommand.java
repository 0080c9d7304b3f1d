package counterbench.shell.people;

import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.people.store.ChangePeople;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Options;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import java.util.function.Supplier;

/** Ends a person. */
public final class PersonEndCommand extends BaseCommand {
    private static final Argument<String> NAME = Argument.of("NAME", Readings.TEXT, "who leaves");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public PersonEndCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("person end", Group.LEAD, "Let a person act no more")
                        .takes(NAME.completedBy(begun -> Proposed.people(store)), Options.SITE)
                        .example("person end Ben")
                        .note("What was recorded under the name stays as it is."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        var by = new ChangePeople.By(in.person(), site, in.now(), in.line());
        Entry entry = new ChangePeople(store.get()).end(by, in.get(NAME));
        in.print(in.get(NAME) + " acts no more: " + Told.entry(site, entry));
        return Status.DONE;
    }
}
