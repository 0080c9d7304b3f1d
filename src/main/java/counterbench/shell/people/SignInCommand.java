package counterbench.shell.people;

import counterbench.db.Store;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.people.SignIn;
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
import java.util.List;
import java.util.function.Supplier;

/** Signs a person in to this shell. */
public final class SignInCommand extends BaseCommand {
    private static final Argument<String> NAME = Argument.of("NAME", Readings.TEXT, "who signs in");

    private final Supplier<Store> store;
    private final SignIn signIn;
    private final SiteChoice sites;

    public SignInCommand(Supplier<Store> store, SignIn signIn, SiteChoice sites) {
        super(
                Manual.of("sign-in", Group.EVERYBODY, "Sign in to this shell, and choose its site")
                        .takes(NAME.completedBy(begun -> Proposed.people(store)), Options.SITE)
                        .example("sign-in Ada")
                        .example("sign-in Ada --site NORTH")
                        .note(
                                "The PIN is asked. After five wrong ones one has to wait, each time"
                                        + " longer.\nIn scripts, set COUNTERBENCH_PERSON and"
                                        + " COUNTERBENCH_PIN instead."));
        this.store = store;
        this.signIn = signIn;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        List<Site> chosen = sites.named(in);
        String name = in.get(NAME);
        new StaffBook(store.get()).person(name);
        Person person = signIn.signIn(name, in.pin("PIN of " + name + ": "));
        in.session().signIn(person);
        in.find(Options.SITE).ifPresent(in.session()::choose);
        in.print(
                person.name()
                        + " ("
                        + Role.listed(person.roles())
                        + ") is signed in"
                        + (chosen.size() == 1
                                ? " at " + chosen.get(0).site()
                                : "; the store has several sites: name one with each act, or for"
                                        + " this shell with sign-in "
                                        + person.name()
                                        + " --site "
                                        + chosen.get(0).site()));
        return Status.DONE;
    }
}
