package counterbench.shell.claims;

import counterbench.acts.desk.ClaimPage;
import counterbench.acts.desk.ClaimPage.CoreCredit;
import counterbench.acts.store.ReadClaimPage;
import counterbench.acts.store.ReadClaims;
import counterbench.claims.Claim;
import counterbench.claims.Credit;
import counterbench.claims.Money;
import counterbench.db.Store;
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
import counterbench.shell.acts.LiveNames;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Shows a claim line by line, what came for it, and what core credits came for its cores. */
public final class ClaimShowCommand extends BaseCommand {
    private static final Argument<String> CLAIM =
            Argument.of("CLAIM", Readings.TEXT, "the claim's number");
    private static final String APART =
            "core credits clear the charge that is owed for a core and pay no part of the claim";

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public ClaimShowCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of(
                                "claim show",
                                Group.WARRANTY_DESK,
                                "Show a claim, what came for it, and for its cores")
                        .takes(CLAIM, Options.SITE.completedBy(new LiveNames(store).sites()))
                        .printsRows()
                        .example("claim show CN-008")
                        .note(
                                "A claim is paid when its credits, core credits apart, come to its"
                                        + " whole total, the core charge in it included. A core"
                                        + " credit clears the charge that is owed for its core (rack"
                                        + " --charges). Where the core charge comes as a core credit"
                                        + " alone, the claim is paid differently by just so much:"
                                        + " settle that finding with this reason."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        String number = in.get(CLAIM);
        ClaimPage page =
                new ReadClaimPage(store.get())
                        .find(site, in.now(), number)
                        .orElseThrow(
                                () ->
                                        UnknownClaim.refused(
                                                in, site, number, new ReadClaims(store.get())));
        print(in, page);
        Claim claim = page.line().claim();
        in.tell(
                "claim "
                        + claim.claim()
                        + " for job "
                        + claim.job()
                        + ": "
                        + page.line().standing().state().words()
                        + (claim.reason() == null ? "" : ", " + claim.reason()));
        if (page.lacksWhatCoreCreditsBrought()) {
            in.tell(
                    "what is open came as core credits: "
                            + APART
                            + ", so it is paid differently until its finding is settled");
        } else if (!page.coreCredits().isEmpty()) {
            in.tell(APART);
        }
        return Status.DONE;
    }

    private static void print(Invocation in, ClaimPage page) {
        Claim claim = page.line().claim();
        try (Rows rows =
                in.rows(
                        Column.text("line"),
                        Column.text("what"),
                        Column.text("day"),
                        Column.number("amount"))) {
            add(rows, "labour", hours(claim), null, claim.labourAmount());
            add(rows, "parts", null, null, claim.partsAmount());
            add(rows, "core charge", null, null, claim.coreCharge());
            add(rows, "total", null, claim.submittedOn(), claim.total().orElse(null));
            page.payments().forEach(c -> add(rows, "credit", words(c), c.paidOn(), c.amount()));
            add(rows, "open", null, null, page.line().standing().open().orElse(null));
            page.coreCredits().forEach(c -> add(rows, c));
        }
    }

    private static void add(Rows rows, CoreCredit cleared) {
        Credit credit = cleared.credit();
        String core = cleared.core() == null ? "no core of the job" : "core " + cleared.core();
        add(rows, "core credit", credit.name() + " for " + core, credit.paidOn(), credit.amount());
    }

    private static void add(
            Rows rows,
            String line,
            @Nullable String what,
            @Nullable LocalDate day,
            @Nullable BigDecimal amount) {
        if (amount != null) {
            rows.add(line, what, day, Money.text(amount));
        }
    }

    private static @Nullable String hours(Claim claim) {
        BigDecimal hours = claim.labourHours();
        return hours == null ? null : hours.stripTrailingZeros().toPlainString() + " h";
    }

    private static String words(Credit credit) {
        return credit.name() + ", names " + AskMatches.names(credit);
    }
}
