package counterbench.shell.month;

import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.month.sheet.BookKind;
import counterbench.month.sheet.SiteMonth;
import counterbench.month.store.ExportMonth;
import counterbench.month.store.MonthFindings;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.sheets.report.ReportLayouts;
import counterbench.sheets.report.WorkbookSink;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.WorkbookFile;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Optional;
import java.util.function.Supplier;

/** Writes one of the monthly workbooks. */
public final class ExportMonthCommand extends BaseCommand {
    private static final Option<YearMonth> MONTH =
            Option.of("month", "MONTH", Readings.MONTH, "which month, such as 2026-03")
                    .asRequired();

    private final BookKind kind;
    private final Supplier<Store> store;
    private final SiteChoice sites;
    private final WorkbookSink sink;

    public ExportMonthCommand(
            BookKind kind, Supplier<Store> store, SiteChoice sites, WorkbookSink sink) {
        super(
                Manual.of(
                                "export " + kind.word(),
                                Group.MONTH,
                                "Write the " + kind.word() + " workbook of a month")
                        .takes(MONTH, WorkbookFile.TO, WorkbookFile.REPLACE, Options.SITE)
                        .example("export " + kind.word() + " --month 2026-03")
                        .example(
                                "export "
                                        + kind.word()
                                        + " --month 2026-03 --to march.xlsx --replace")
                        .note(
                                "Headings, order and columns are changed in a copy of reports/"
                                        + kind.word()
                                        + ".yaml in the folder reports of the home folder.")
                        .note(
                                "No number in the workbook is leave to drive; the maker's own"
                                        + " procedure comes first."));
        this.kind = kind;
        this.store = store;
        this.sites = sites;
        this.sink = sink;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        SiteMonth period =
                begun(
                        in,
                        new SiteMonth(
                                site,
                                in.get(MONTH),
                                new MonthFindings(store.get(), site).sealed()));
        String usual = kind.word() + "-" + site.site() + "-" + period.month() + ".xlsx";
        Path file = WorkbookFile.of(in, usual);
        ExportMonth.Request request =
                new ExportMonth.Request(
                        kind,
                        period,
                        new ReportLayouts(in.home().location()).layout(kind.word()),
                        in.now(),
                        file);
        Optional<Entry> newest =
                WorkbookFile.write(
                        in,
                        file,
                        () -> new ExportMonth(store.get(), sink).run(request, in.progress()));
        in.tell(told(period, newest));
        if (period.isBeforeEnd(in.now())) {
            in.tell("the month is not over yet; its last facts are still to come");
        }
        return Status.DONE;
    }

    private static SiteMonth begun(Invocation in, SiteMonth period) {
        if (in.now().isBefore(period.start())) {
            throw new Refused(
                    "month \"" + period.month() + "\"",
                    "it has not begun",
                    "say a month up to " + period.site().monthOf(in.now()));
        }
        return period;
    }

    private String told(SiteMonth period, Optional<Entry> newest) {
        return "the %s workbook of %s for %s, as %s at %s"
                .formatted(
                        kind.word(),
                        period.site().site(),
                        period.month(),
                        period.sealed().of(period.month()).isPresent() ? "sealed" : "known",
                        newest.map(e -> "journal entry " + e.number()).orElse("an empty journal"));
    }
}
