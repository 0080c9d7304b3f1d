package counterbench.shell.month;

import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.month.store.SealMonth;
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
import counterbench.shell.acts.LiveNames;
import java.time.YearMonth;
import java.util.function.Supplier;

/** Closes a month. */
public final class SealCommand extends BaseCommand {
    private static final Argument<YearMonth> MONTH =
            Argument.of("MONTH", Readings.MONTH, "which month, such as 2026-03");
    private static final Option<String> OVERRIDE =
            Option.of("override", "REASON", Readings.TEXT, "seal over open findings, and why");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public SealCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("seal", Group.LEAD, "Close a month")
                        .takes(
                                MONTH,
                                OVERRIDE,
                                Options.SITE.completedBy(new LiveNames(store).sites()))
                        .example("seal 2026-03")
                        .example("seal 2026-03 --override \"agreed with the maker on 9 April\"")
                        .note(
                                "A month is sealed when its findings of severity stop and fix are"
                                        + " settled or gone, and months in their order. Nothing is"
                                        + " booked in it any more: late paper and reversals are"
                                        + " booked in the first open month. Its workbooks come out"
                                        + " the same, cell by cell, whenever exported, and a sealed"
                                        + " month stays sealed."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        YearMonth month = in.get(MONTH);
        Entry entry =
                new SealMonth(store.get())
                        .run(
                                new SealMonth.Request(
                                        site,
                                        month,
                                        in.person(),
                                        in.now(),
                                        in.find(OVERRIDE).orElse(null),
                                        in.line()));
        in.print(month + " of site " + site.site() + " is sealed: entry " + entry.number());
        in.tell("export parts and export warranty show it as it is now, whenever they are asked");
        return Status.DONE;
    }
}
