package counterbench.shell.review;

import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.people.Person;
import counterbench.review.store.SettleFinding;
import counterbench.shared.Site;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.acts.LiveNames;
import java.util.List;
import java.util.function.Supplier;

/** Lets a finding stand, with a reason. */
public final class FindingSettleCommand extends BaseCommand {
    private static final Option<String> REASON =
            Option.of("reason", "TEXT", Readings.TEXT, "why it may stand").asRequired();

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public FindingSettleCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("finding settle", Group.MONTH, "Let a finding stand, with a reason")
                        .takes(
                                FoundFinding.ID.completedBy(new LiveNames(store).findings()),
                                REASON,
                                Options.SITE.completedBy(new LiveNames(store).sites()))
                        .example(
                                "finding settle F-7Q2M4C9XKD --reason \"washers found in the tray,"
                                        + " counted again\"")
                        .note(
                                "A stop is the lead's to settle; other findings are for parts (kits,"
                                        + " stock, cores, shipments), technician (jobs) or warranty"
                                        + " (claims, credits).")
                        .note(
                                "It stays settled while its evidence is the same, and opens again"
                                        + " when that changes or the entry is reversed."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Person person = in.person();
        List<Site> asked = sites.named(in);
        FoundFinding found =
                FoundFinding.find(in, store.get(), asked)
                        .orElseThrow(() -> FoundFinding.unknown(in, store.get(), asked));
        var by = new SettleFinding.By(person, in.now(), in.get(REASON), in.line());
        Entry entry =
                new SettleFinding(store.get()).run(found.site(), found.stated().finding(), by);
        in.print(
                "finding "
                        + found.stated().id()
                        + " is settled: entry "
                        + entry.number()
                        + " of site "
                        + found.site().site());
        return Status.DONE;
    }
}
