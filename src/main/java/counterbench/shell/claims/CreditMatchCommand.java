package counterbench.shell.claims;

import counterbench.acts.Stamp;
import counterbench.acts.desk.CreditDesk;
import counterbench.acts.desk.MatchCredits;
import counterbench.acts.desk.MatchCredits.Share;
import counterbench.acts.store.ReadCreditDesk;
import counterbench.acts.store.ReadCreditLines;
import counterbench.acts.store.RecordAct;
import counterbench.claims.Credit;
import counterbench.claims.Money;
import counterbench.claims.matching.Proposal;
import counterbench.claims.matching.Proposal.Verdict;
import counterbench.db.Store;
import counterbench.people.Person;
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
import counterbench.shell.acts.LiveNames;
import counterbench.shell.month.ReadJobs;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Pairs lines of remittances with claims, and asks where it is not plain which. */
public final class CreditMatchCommand extends BaseCommand {
    private static final Argument<String> CREDIT =
            Argument.of("CREDIT", Readings.TEXT, "one line, such as RM-0227-N/35, to match by hand")
                    .asOptional();
    private static final Option<String> CLAIM =
            Option.of(
                            "claim",
                            "CLAIM[=AMOUNT]",
                            Readings.TEXT,
                            "the claim that it pays; several with their amounts")
                    .asRepeatable();
    private static final Option<Boolean> DRY_RUN =
            Option.flag("dry-run", "only show what would be taken and asked");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public CreditMatchCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of(
                                "credit match",
                                Group.WARRANTY_DESK,
                                "Pair lines of remittances with claims")
                        .takes(
                                CREDIT,
                                CLAIM,
                                DRY_RUN,
                                Options.SITE.completedBy(new LiveNames(store).sites()))
                        .printsRows()
                        .example("credit match --dry-run")
                        .example("credit match RM-0227-N/35 --claim CN-025")
                        .example(
                                "credit match RM-0313-N/7 --claim CN-031=600.00 --claim"
                                        + " CN-032=812.36")
                        .note(
                                "By claim number, VIN, core, serial, amount and date, with typing"
                                        + " slips allowed. A pair is taken by itself only where it is"
                                        + " the one good match for both sides by a clear margin;"
                                        + " doubtful ones are asked one by one, with the reasons, or"
                                        + " listed where nobody can be asked. What is taken is"
                                        + " recorded and can be reversed.")
                        .note(
                                "A core credit belongs to the core that it names. Where its tag or"
                                        + " serial has a slip, match it with the claim of the core's"
                                        + " job: it then clears the charge of that job's core."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        if (in.has(CREDIT) != in.has(CLAIM)) {
            throw in.wrong(
                    "one line by hand: credit match CREDIT --claim CLAIM; all lines: credit match");
        }
        CreditDesk desk = desk(in, site);
        if (in.has(CREDIT)) {
            byHand(in, site, desk);
            return Status.DONE;
        }
        List<Proposal> proposals = desk.proposals();
        print(in, proposals);
        List<Share> sure =
                proposals.stream()
                        .filter(p -> p.verdict() == Verdict.SURE)
                        .flatMap(p -> shares(p, desk).stream())
                        .toList();
        if (!in.has(DRY_RUN) && !sure.isEmpty()) {
            record(in, site, sure);
        }
        tell(in, proposals);
        if (!in.has(DRY_RUN) && in.isScreen()) {
            new AskMatches(
                            in,
                            sure.isEmpty() ? desk : desk(in, site),
                            () -> desk(in, site),
                            shares -> record(in, site, shares))
                    .ask(proposals);
        }
        return Status.DONE;
    }

    private CreditDesk desk(Invocation in, Site site) {
        return new ReadCreditDesk(store.get()).run(site, in.now(), ReadJobs.shown(in, site));
    }

    private static List<Share> shares(Proposal proposal, CreditDesk desk) {
        return proposal.shares().stream()
                .map(
                        s ->
                                new Share(
                                        proposal.credit(),
                                        s.candidate().name(),
                                        Objects.requireNonNull(
                                                desk.jobs().get(s.candidate().name())),
                                        s.amount(),
                                        proposal.why()))
                .toList();
    }

    private void byHand(Invocation in, Site site, CreditDesk desk) {
        String name = in.get(CREDIT);
        Credit credit =
                desk.credit(name)
                        .orElseThrow(
                                () ->
                                        NotWaiting.refused(
                                                name,
                                                desk,
                                                new ReadCreditLines(store.get(), site)));
        record(in, site, new SharedOut(desk, "matched by hand").of(credit, in.all(CLAIM)));
    }

    private void record(Invocation in, Site site, List<Share> shares) {
        Person person = in.person();
        var by = new RecordAct.By(person, site, in.now(), in.commandName(), in.line());
        RecordAct.Recorded recorded =
                new RecordAct(store.get())
                        .run(by, new MatchCredits(shares, new Stamp(in.now(), person.name())));
        shares.forEach(
                s ->
                        in.tell(
                                "credit "
                                        + s.credit().name()
                                        + ", "
                                        + Money.text(s.amount())
                                        + ", goes to claim "
                                        + s.claim()));
        in.tell("recorded: " + ActTold.where(site, recorded.entry()));
        ActTold.besides(recorded).forEach(in::tell);
    }

    private static void print(Invocation in, List<Proposal> proposals) {
        try (Rows rows =
                in.rows(
                        Column.text("credit"),
                        Column.text("paid_on"),
                        Column.number("amount"),
                        Column.text("names"),
                        Column.text("verdict"),
                        Column.text("claim"),
                        Column.text("why"))) {
            proposals.stream()
                    .filter(p -> p.verdict() != Verdict.AS_NAMED)
                    .forEach(p -> add(rows, p));
        }
    }

    private static void add(Rows rows, Proposal proposal) {
        Credit credit = proposal.credit();
        List<String> claims = new ArrayList<>();
        proposal.shares().forEach(s -> claims.add(s.candidate().name()));
        if (claims.isEmpty()) {
            proposal.best().forEach(b -> claims.add(b.candidate().name()));
        }
        rows.add(
                credit.name(),
                credit.paidOn(),
                Money.text(credit.amount()),
                AskMatches.names(credit),
                proposal.verdict().words(),
                claims.isEmpty() ? null : String.join(", ", claims),
                proposal.why());
    }

    private static void tell(Invocation in, List<Proposal> proposals) {
        long named = count(proposals, Verdict.AS_NAMED);
        long listed = proposals.size() - named;
        in.tell(
                counted(listed, "line", "lines")
                        + " to match: "
                        + Stream.of(Verdict.SURE, Verdict.DOUBTFUL, Verdict.UNKNOWN)
                                .map(
                                        v ->
                                                counted(count(proposals, v), "is", "are")
                                                        + " "
                                                        + v.words())
                                .collect(Collectors.joining(", "))
                        + "; "
                        + counted(named, "other names its", "others name their")
                        + " claim rightly");
        proposals.stream()
                .filter(p -> p.verdict() == Verdict.UNKNOWN)
                .forEach(p -> in.tell(unknown(p.credit())));
    }

    private static String unknown(Credit credit) {
        String byHand = "credit match " + credit.name() + " --claim CLAIM";
        return credit.kind() == Credit.Kind.CORE
                ? "core credit "
                        + credit.name()
                        + " names no core that we know: if the core's job is claimed, name its claim ("
                        + byHand
                        + "); else reverse its line (journal show) and import it with the core's tag"
                : "credit "
                        + credit.name()
                        + " is like no claim: name the one that it pays ("
                        + byHand
                        + "); if it is another garage's, say so in settling its finding (review"
                        + " --rule credit-unmatched, finding settle)";
    }

    private static String counted(long count, String one, String more) {
        return count + " " + (count == 1 ? one : more);
    }

    private static long count(List<Proposal> proposals, Verdict verdict) {
        return proposals.stream().filter(p -> p.verdict() == verdict).count();
    }
}
