package counterbench.shell.people;

import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.people.SignIn;
import counterbench.people.store.ChangePeople;
import counterbench.people.store.StaffBook;
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

/** Gives a person another PIN. */
public final class PersonPinCommand extends BaseCommand {
    private static final Argument<String> NAME =
            Argument.of("NAME", Readings.TEXT, "whose PIN; the own one unless said").asOptional();

    private final Supplier<Store> store;
    private final SignIn signIn;
    private final SiteChoice sites;

    public PersonPinCommand(Supplier<Store> store, SignIn signIn, SiteChoice sites) {
        super(
                Manual.of("person pin", Group.LEAD, "Set another PIN, for others or oneself")
                        .takes(NAME.completedBy(begun -> Proposed.people(store)), Options.SITE)
                        .example("person pin")
                        .example("person pin Ben")
                        .note(
                                "Everybody may change the own PIN, and is asked for the old one"
                                        + " first. A lead sets those of others."));
        this.store = store;
        this.signIn = signIn;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        Person person = in.person();
        String name = in.find(NAME).orElse(person.name());
        if (name.equals(person.name())) {
            signIn.signIn(name, in.pin("PIN of " + name + " until now: "));
        } else {
            person.mustActAs(Role.LEAD, in.commandName());
            new StaffBook(store.get()).person(name);
        }
        var by = new ChangePeople.By(person, site, in.now(), in.line());
        Entry entry = new ChangePeople(store.get()).pin(by, name, NewPin.typed(in, name));
        in.print(name + " has a new PIN: " + Told.entry(site, entry));
        return Status.DONE;
    }
}
