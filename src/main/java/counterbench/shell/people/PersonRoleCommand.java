package counterbench.shell.people;

import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.people.Role;
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
import java.util.Set;
import java.util.function.Supplier;

/** Gives a person other roles. */
public final class PersonRoleCommand extends BaseCommand {
    private static final Argument<String> NAME = Argument.of("NAME", Readings.TEXT, "whose roles");
    private static final Argument<Role> ROLES =
            Argument.of("ROLE", Readings.oneOf(Role.class), "all the roles that there shall be")
                    .asRepeatable();

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public PersonRoleCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("person role", Group.LEAD, "Give a person other roles")
                        .takes(NAME.completedBy(begun -> Proposed.people(store)))
                        .takes(ROLES, Options.SITE)
                        .example("person role Ben parts warranty")
                        .note(
                                "The roles named replace those before. Somebody who had been ended"
                                        + " acts again."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        var by = new ChangePeople.By(in.person(), site, in.now(), in.line());
        Set<Role> roles = Set.copyOf(in.all(ROLES));
        Entry entry = new ChangePeople(store.get()).roles(by, in.get(NAME), roles);
        in.print(
                in.get(NAME)
                        + " may act as "
                        + Role.listed(roles)
                        + ": "
                        + Told.entry(site, entry));
        return Status.DONE;
    }
}
