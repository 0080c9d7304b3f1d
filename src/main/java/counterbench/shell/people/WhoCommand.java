package counterbench.shell.people;

import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Options;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Says who is signed in, and where. */
public final class WhoCommand extends BaseCommand {
    private final SiteChoice sites;

    public WhoCommand(SiteChoice sites) {
        super(
                Manual.of("who", Group.EVERYBODY, "Say who is signed in, at which site")
                        .takes(Options.SITE)
                        .printsRows()
                        .note(
                                "In scripts this signs in whom COUNTERBENCH_PERSON names, and so"
                                        + " tells whether that works."));
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        List<Site> chosen = sites.named(in);
        try (Rows rows =
                in.rows(Column.text("person"), Column.text("roles"), Column.text("site"))) {
            if (isKnown(in)) {
                Person person = person(in);
                rows.add(
                        person.name(),
                        person.isActive() ? Role.listed(person.roles()) : "none",
                        chosen.stream().map(Site::site).collect(Collectors.joining(", ")));
                if (!person.isActive()) {
                    in.tell(
                            person.name()
                                    + " is signed in and acts no more; sign in as somebody else, or"
                                    + " have a lead give roles again: person role "
                                    + person.name()
                                    + " ROLE");
                }
            } else {
                in.tell("nobody is signed in; type sign-in NAME");
            }
        }
        return Status.DONE;
    }

    /** Whoever sits here, also one who was ended meanwhile. */
    private static Person person(Invocation in) {
        Optional<Person> seated = in.session().person();
        try {
            return in.person();
        } catch (Refused e) {
            return new Person(seated.orElseThrow(() -> e).name(), Set.of());
        }
    }

    private static boolean isKnown(Invocation in) {
        return in.session().person().isPresent()
                || in.surroundings().variable(Invocation.PERSON_VARIABLE).isPresent();
    }
}
