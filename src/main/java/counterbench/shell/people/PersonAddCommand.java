package counterbench.shell.people;

import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.people.store.ChangePeople;
import counterbench.people.store.PinHash;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import java.util.Set;
import java.util.function.Supplier;

/** Adds a person with roles and a PIN. */
public final class PersonAddCommand extends BaseCommand {
    private static final Argument<String> NAME = Argument.of("NAME", Readings.TEXT, "the name");
    private static final Option<Role> ROLE =
            Option.of("role", "ROLE", Readings.oneOf(Role.class), "what the person may do")
                    .asRequired()
                    .asRepeatable();

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public PersonAddCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("person add", Group.LEAD, "Add a person with roles and a PIN")
                        .takes(NAME, ROLE, Options.SITE)
                        .example("person add Ben --role parts --role technician")
                        .note(
                                "The new person types the PIN, 4 to 12 digits; from a script it is"
                                        + " the next line of input."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        Person lead = in.person();
        lead.mustActAs(Role.LEAD, in.commandName());
        String name = in.get(NAME);
        PinHash pin = NewPin.typed(in, name);
        var by = new ChangePeople.By(lead, site, in.now(), in.line());
        Set<Role> roles = Set.copyOf(in.all(ROLE));
        Entry entry = new ChangePeople(store.get()).add(by, name, roles, pin);
        in.print(name + " may act as " + Role.listed(roles) + ": " + Told.entry(site, entry));
        return Status.DONE;
    }
}
