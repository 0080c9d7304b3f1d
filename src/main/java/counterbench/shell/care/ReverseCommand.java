package counterbench.shell.care;

import counterbench.acts.store.ReadRaised;
import counterbench.care.ReversalRequest;
import counterbench.care.store.LostMatches;
import counterbench.care.store.ReverseEntry;
import counterbench.care.store.SealedFacts;
import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.judgement.Finding;
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
import counterbench.shell.acts.ActTold;
import java.util.List;
import java.util.function.Supplier;

/** Takes back an entry or a fact. */
public final class ReverseCommand extends BaseCommand {
    private static final Argument<String> ENTRY =
            Argument.of("ENTRY[.LINE]", Readings.TEXT, "the entry, or one of its facts");
    private static final Option<String> REASON =
            Option.of("reason", "TEXT", Readings.TEXT, "why").asRequired();

    /** Of more findings than these, the rest is left to the review. */
    private static final int MOST_RAISED = 10;

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public ReverseCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("reverse", Group.LEAD, "Take back an entry, or one of its facts")
                        .takes(ENTRY, REASON, Options.SITE)
                        .example("reverse 12 --reason \"sheet of another day\"")
                        .example("reverse 12.3 --reason \"wrong job\"")
                        .note(
                                "What was recorded stays to be read and counts no more. Everybody"
                                        + " may take back the own entries, a lead those of"
                                        + " others.\nA reversal is not reversed: record the facts"
                                        + " anew."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        ReversalRequest request = ReversalRequest.of(in.get(ENTRY), in.get(REASON));
        Site site = sites.of(in);
        Store reversed = store.get();
        Entry entry =
                new ReverseEntry(reversed).run(request, site, in.person(), in.now(), in.line());
        reversed.again(() -> new ReversalTold(reversed, site).lines(entry)).forEach(in::tell);
        in.print(
                request.typed()
                        + " is reversed: entry "
                        + entry.number()
                        + " of site "
                        + site.site());
        tellOthers(in, request, entry, site, reversed);
        reversed.again(() -> new ReadRaised(reversed, site).by(entry))
                .ifPresentOrElse(
                        raised -> tell(in, raised),
                        () ->
                                in.tell(
                                        "it concerns too much to say here what it raises: review"
                                                + " lists that"));
        return Status.DONE;
    }

    /** What it does to settlements, sealed months and matches. */
    private static void tellOthers(
            Invocation in, ReversalRequest request, Entry entry, Site site, Store reversed) {
        reversed.again(() -> new OpenedAgain(reversed, site).lines(entry, in.now()))
                .forEach(in::tell);
        reversed.again(() -> new SealedFacts(reversed, site).of(request.entry()))
                .forEach(
                        (month, open) ->
                                in.tell(
                                        month
                                                + " is sealed and stays as it is: the reversal is"
                                                + " booked in "
                                                + open));
        reversed.again(() -> new LostMatches(reversed, site).of(request))
                .forEach(
                        (match, credits) ->
                                in.tell(
                                        "entry "
                                                + match
                                                + " matched "
                                                + String.join(", ", credits)
                                                + " and counts no more without it; reverse "
                                                + match
                                                + ", too, or it counts again when the line comes"
                                                + " anew with the same amount"));
    }

    private static void tell(Invocation in, List<Finding> raised) {
        raised.stream().limit(MOST_RAISED).map(ActTold::of).forEach(in::tell);
        int more = raised.size() - MOST_RAISED;
        if (more > 0) {
            in.tell(more + (more == 1 ? " finding" : " findings") + " more: review lists them");
        }
    }
}
