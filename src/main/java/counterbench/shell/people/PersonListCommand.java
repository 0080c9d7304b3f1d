package counterbench.shell.people;

import counterbench.db.Store;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.people.store.StaffBook;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.util.Set;
import java.util.function.Supplier;

/** Shows everybody. */
public final class PersonListCommand extends BaseCommand {
    private final Supplier<Store> store;
    private final SiteChoice sites;

    public PersonListCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("person list", Group.LEAD, "Show everybody with their roles")
                        .printsRows()
                        .note("Whoever has no roles acts no more."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        sites.named(in);
        StaffBook book = new StaffBook(store.get());
        Set<String> withPin = book.namesWithPin();
        try (Rows rows = in.rows(Column.text("person"), Column.text("roles"), Column.text("pin"))) {
            for (Person person : book.people()) {
                rows.add(
                        person.name(),
                        Role.listed(person.roles()),
                        withPin.contains(person.name()) ? "set" : "not set");
            }
        }
        return Status.DONE;
    }
}
