package counterbench.shell.people;

import counterbench.people.Role;
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
                rows.add(
                        in.person().name(),
                        Role.listed(in.person().roles()),
                        chosen.stream().map(Site::site).collect(Collectors.joining(", ")));
            } else {
                in.tell("nobody is signed in; type sign-in NAME");
            }
        }
        return Status.DONE;
    }

    private static boolean isKnown(Invocation in) {
        return in.session().person().isPresent()
                || in.surroundings().variable(Invocation.PERSON_VARIABLE).isPresent();
    }
}
