package counterbench.shell.care;

import counterbench.care.store.VerifyJournal;
import counterbench.db.Store;
import counterbench.journal.store.Verification;
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
import java.util.function.Supplier;

/** Verifies the journals. */
public final class JournalVerifyCommand extends BaseCommand {
    private final Supplier<Store> store;
    private final SiteChoice sites;

    public JournalVerifyCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of(
                                "journal verify",
                                Group.FILES_AND_CARE,
                                "Verify that nothing recorded was changed")
                        .takes(Options.SITE)
                        .printsRows()
                        .note(
                                "Computes every hash again, looks for all that facts name, and adds"
                                        + " up every part over all accounts. Ends with 1 if an"
                                        + " entry does not hold."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        boolean allHold = true;
        try (Rows rows =
                in.rows(
                        Column.text("site"),
                        Column.text("state"),
                        Column.number("entries"),
                        Column.number("facts"),
                        Column.text("last_hash"),
                        Column.number("first_broken"),
                        Column.text("why"))) {
            for (Site site : sites.named(in)) {
                Verification.Outcome outcome = new VerifyJournal(store.get()).run(site, in.now());
                allHold &= outcome.broken().isEmpty();
                rows.add(
                        site.site(),
                        outcome.broken().isEmpty() ? "holds" : "does not hold",
                        outcome.entries(),
                        outcome.facts(),
                        outcome.lastHash(),
                        outcome.broken().map(Verification.Broken::number).orElse(null),
                        outcome.broken().map(Verification.Broken::why).orElse(""));
            }
        }
        if (!allHold) {
            in.tell(
                    "the store was changed otherwise than through this program, or its disk is"
                            + " failing: keep a copy of it, and restore the newest backup that"
                            + " holds into another home folder");
        }
        return allHold ? Status.DONE : Status.REFUSED;
    }
}
