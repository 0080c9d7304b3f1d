package counterbench.shell.demo;

import counterbench.acts.rack.Board;
import counterbench.acts.store.ReadRack;
import counterbench.db.Store;
import counterbench.month.ConsumptionRow;
import counterbench.month.MonthAccount;
import counterbench.month.store.ReconcileMonth;
import counterbench.review.StatedFinding;
import counterbench.review.store.FindingBook;
import counterbench.review.store.ReviewSite;
import counterbench.shared.Site;
import counterbench.shell.Invocation;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import counterbench.shell.rack.RackTable;
import counterbench.shell.review.FindingSummary;
import java.time.Instant;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/** Shows once what the program makes of the invented garage: findings, tables, workbooks. */
final class DemoTour {
    /** The moment as of which the garage's story is told. */
    static final String AS_OF = "2026-04-10T12:00:00-05:00";

    /** The campaign and month whose hardware is reconciled: that of the refitted rings. */
    static final String CAMPAIGN = "HB-0417";

    static final YearMonth RECONCILED = YearMonth.of(2026, 1);
    static final Instant MOMENT = Instant.parse(AS_OF);

    private final Invocation in;
    private final Store store;
    private final List<StatedFinding> findings = new ArrayList<>();

    DemoTour(Invocation in, Store store) {
        this.in = in;
        this.store = store;
    }

    /** What must be looked at most of all. */
    void findings(List<Site> yards) {
        for (Site yard : yards) {
            in.progress().begin("judging jobs of " + yard.site(), 0);
            findings.addAll(
                    new FindingBook(store)
                            .asOf(yard, MOMENT, ReviewSite.NEWEST, finding -> true, jobs -> {}));
        }
        FindingSummary summary = new FindingSummary();
        findings.forEach(summary::add);
        heading("review as of " + AS_OF + ": " + summary.line());
        try (Rows rows =
                in.rows(
                        Column.text("open_stops"),
                        Column.number("count"),
                        Column.text("one_of_them"))) {
            StopsByRule.of(findings).forEach(stops -> add(rows, stops));
        }
    }

    private static void add(Rows rows, StopsByRule stops) {
        rows.add(stops.rule().word(), stops.count(), stops.example().finding().message());
    }

    /** What a month's jobs of a campaign used. */
    void consumption(Site yard) {
        in.progress().begin("reconciling " + yard.site(), 0);
        MonthAccount account =
                new ReconcileMonth(store)
                        .run(yard, RECONCILED, MOMENT, ReviewSite.NEWEST, jobs -> {});
        heading(
                "what the jobs of campaign "
                        + CAMPAIGN
                        + " used at "
                        + yard.site()
                        + " in "
                        + RECONCILED
                        + ", and the jobs to look at");
        try (Rows rows =
                in.rows(
                        Column.text("part"),
                        Column.number("required"),
                        Column.number("fitted_new"),
                        Column.number("refitted_old"),
                        Column.number("difference"),
                        Column.text("jobs"))) {
            account.consumption(CAMPAIGN).forEach(row -> add(rows, row));
        }
    }

    private static void add(Rows rows, ConsumptionRow row) {
        rows.add(
                row.part(),
                row.required(),
                row.fittedNew(),
                row.refittedOld(),
                row.difference(),
                String.join(" ", row.jobs()));
    }

    /** A yard's cores on their way back, what needs a hand first. */
    void rack(Site yard) {
        in.progress().begin("reading the rack of " + yard.site(), 0);
        List<StatedFinding> ofYard =
                findings.stream()
                        .filter(stated -> stated.finding().site().equals(yard.site()))
                        .toList();
        in.print("");
        new RackTable(yard, MOMENT)
                .write(
                        in,
                        new Board(new ReadRack(store, yard, MOMENT).undecided(ofYard, jobs -> {})));
    }

    /** Both monthly workbooks of every yard. */
    void workbooks(DemoBooks books) {
        in.progress().begin("writing workbooks", 0);
        heading("workbooks of " + DemoBooks.MONTH + ", for any office program");
        books.written().forEach(file -> in.print("  " + file));
    }

    private void heading(String text) {
        in.print("");
        in.print(text);
        in.print("");
    }
}
