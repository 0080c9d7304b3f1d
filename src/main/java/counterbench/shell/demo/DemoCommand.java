package counterbench.shell.demo;

import counterbench.db.Migrations;
import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.month.ConsumptionRow;
import counterbench.month.MonthAccount;
import counterbench.month.store.ReconcileMonth;
import counterbench.review.StatedFinding;
import counterbench.review.store.FindingBook;
import counterbench.review.store.ReviewSite;
import counterbench.shared.Site;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.Status;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import counterbench.shell.review.FindingSummary;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/** Fills a home of its own with the invented garage and runs the whole job on it once. */
public final class DemoCommand extends BaseCommand {
    private static final Option<Path> HOME =
            Option.of(
                    "home",
                    "FOLDER",
                    Readings.PATH,
                    "a folder for the demo alone; beside the home folder unless said");

    /** The moment as of which the garage's story is told. */
    private static final String AS_OF = "2026-04-10T12:00:00-05:00";

    private static final String CAMPAIGN = "HB-0417";
    private static final YearMonth MONTH = YearMonth.of(2026, 1);
    private static final String STORE_VARIABLE = "COUNTERBENCH_STORE";

    public DemoCommand() {
        super(
                Manual.of("demo", Group.EVERYBODY, "Run the whole job on an invented garage")
                        .takes(HOME)
                        .example("demo")
                        .note(
                                "The demo has a home folder of its own, which it empties and fills"
                                        + " each time. It never touches other folders.")
                        .note("All places, people, parts and values in it are invented."));
    }

    @Override
    protected Status run(Invocation in) throws IOException {
        Path home = in.home().location();
        Path folder = DemoHome.emptied(in.find(HOME).orElse(DemoHome.beside(home)), home);
        Path paper = folder.resolve("paper");
        DemoPaper.copy(paper);
        StoreAddress address = StoreAddress.of(folder, null);
        try (Store store = Store.open(address, new Migrations((opened, from) -> {}))) {
            List<Site> yards = new DemoGarage(store, paper, in.now(), in.progress()).fill();
            in.print("the invented garage of Larkmere lies in " + folder);
            in.print("its paper lies in " + paper + ", and README.md there tells its story");
            findings(in, store, yards);
            consumption(in, store, yards.get(0));
        }
        tryNext(in, folder);
        return Status.DONE;
    }

    private static void findings(Invocation in, Store store, List<Site> yards) {
        List<StatedFinding> findings = new ArrayList<>();
        for (Site yard : yards) {
            in.progress().begin("judging jobs of " + yard.site(), 0);
            findings.addAll(
                    new FindingBook(store)
                            .asOf(yard, Instant.parse(AS_OF), ReviewSite.NEWEST, jobs -> {}));
        }
        in.print("");
        in.print("review as of " + AS_OF + ": " + FindingSummary.of(findings));
        in.print("");
        try (Rows rows =
                in.rows(
                        Column.text("open_stops"),
                        Column.number("count"),
                        Column.text("one_of_them"))) {
            StopsByRule.of(findings)
                    .forEach(
                            stops ->
                                    rows.add(
                                            stops.rule().word(),
                                            stops.count(),
                                            stops.example().finding().message()));
        }
    }

    private static void consumption(Invocation in, Store store, Site yard) {
        in.progress().begin("reconciling " + yard.site(), 0);
        MonthAccount account =
                new ReconcileMonth(store)
                        .run(yard, MONTH, Instant.parse(AS_OF), ReviewSite.NEWEST, jobs -> {});
        in.print("");
        in.print(
                "what the jobs of campaign "
                        + CAMPAIGN
                        + " used at "
                        + yard.site()
                        + " in "
                        + MONTH
                        + ", and the jobs to look at");
        in.print("");
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

    private static void tryNext(Invocation in, Path folder) {
        boolean server = in.surroundings().variable(STORE_VARIABLE).isPresent();
        TryNext next = new TryNext(folder, server);
        in.print("");
        in.print("try next");
        in.print("  " + next.line("review --as-of " + AS_OF + " --job N-107"));
        in.print(
                "  "
                        + next.line(
                                "reconcile --site NORTH --campaign "
                                        + CAMPAIGN
                                        + " --month "
                                        + MONTH
                                        + " --as-of "
                                        + AS_OF));
        in.print("  " + next.line(""));
        in.print(
                "the last one opens the shell: there type sign-in Maren (the lead; or Hal, Otis,"
                        + " Quinn), with the PIN "
                        + DemoGarage.PIN.typed()
                        + ", and help");
    }
}
