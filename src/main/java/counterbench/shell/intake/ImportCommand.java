package counterbench.shell.intake;

import counterbench.db.Store;
import counterbench.facts.FactKind;
import counterbench.intake.Ahead;
import counterbench.intake.ImportReport;
import counterbench.intake.ImportRights;
import counterbench.intake.store.ImportPaper;
import counterbench.people.Person;
import counterbench.people.store.StaffBook;
import counterbench.shared.Problem;
import counterbench.shared.Progress;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.sheets.Sheet;
import counterbench.sheets.SheetFiles;
import counterbench.sheets.poi.PoiSheets;
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
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Takes in a file or a folder of sheets, all of it or nothing. */
public final class ImportCommand extends BaseCommand {
    private static final Argument<Path> PAPER =
            Argument.of("PAPER", Readings.PATH, "a .csv or .xlsx file, or a folder of them");
    private static final Option<Boolean> DRY_RUN =
            Option.flag("dry-run", "do all but the recording");
    private static final Option<Boolean> AS_NEW =
            Option.flag("as-new", "record rows that look like corrections as facts of their own");
    private static final Option<Path> MARKED =
            Option.of(
                    "marked",
                    "FOLDER",
                    Readings.PATH,
                    "where a copy with the refused rows goes; beside the paper unless said");

    private static final int MOST_NAMES = 5;

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public ImportCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("import", Group.FILES_AND_CARE, "Take in a file or folder of sheets")
                        .takes(PAPER, DRY_RUN, AS_NEW, MARKED, Options.SITE)
                        .printsRows()
                        .example("import march --dry-run")
                        .example("import uses-2026-03.csv --site NORTH")
                        .note(
                                "All is recorded or nothing. Where rows are refused, the first ones"
                                        + " are shown, and a copy of the paper says beside each why.")
                        .note("Importing the same paper again is safe: it adds only what is new."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Person person = in.person();
        Path paper = in.get(PAPER);
        Path marked = in.find(MARKED).map(MarkedFolder::named).orElse(MarkedFolder.beside(paper));
        SheetFiles files = PoiSheets.files();
        List<Sheet> sheets = files.find(paper);
        refuse(ImportRights.problems(person, sheets.stream().map(Sheet::kind).toList()));
        Site site = siteFor(in, sheets);
        var request =
                new ImportPaper.Request(
                        paper, site, person.name(), in.now(), in.has(DRY_RUN), in.has(AS_NEW));
        ImportReport report = take(in, files, sheets, request);
        if (report.isRefused()) {
            throw RefusedRows.refusal("import \"" + paper + "\"", report, files, marked);
        }
        show(in, report);
        passedOver(files.passedOver(paper)).ifPresent(in::tell);
        return Status.DONE;
    }

    private static void refuse(List<Problem> problems) {
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
    }

    /** People and lists of vehicles belong to all sites; any of them may bear the entry. */
    private Site siteFor(Invocation in, List<Sheet> sheets) {
        return sheets.stream().map(Sheet::kind).allMatch(FactKind::belongsToStore)
                ? sites.named(in).get(0)
                : sites.of(in);
    }

    private ImportReport take(
            Invocation in, SheetFiles files, List<Sheet> sheets, ImportPaper.Request request) {
        Progress progress = in.progress();
        progress.begin("reading rows", files.aboutRows(sheets));
        return new ImportPaper(store.get(), files).run(request, sheets, n -> progress.step(1));
    }

    private void show(Invocation in, ImportReport report) {
        try (Rows rows =
                in.rows(Column.text("kind"), Column.number("new"), Column.number("known"))) {
            report.counts().forEach((kind, c) -> rows.add(kind.word(), c.recorded(), c.known()));
        }
        in.tell(summary(in, report));
        if (report.late() > 0) {
            in.tell(rows(report.late()) + " of sealed months: booked in the first open one");
        }
        report.ahead().ifPresent(found -> in.tell(ahead(in, found)));
    }

    private static Optional<String> passedOver(List<String> names) {
        if (names.isEmpty()) {
            return Optional.empty();
        }
        String shown = names.stream().limit(MOST_NAMES).collect(Collectors.joining(", "));
        int more = names.size() - MOST_NAMES;
        return Optional.of(
                "not read, since a folder's sheets are its .csv and .xlsx files: "
                        + shown
                        + (more > 0 ? " and " + more + " more" : ""));
    }

    private String summary(Invocation in, ImportReport report) {
        int fresh = report.counts().values().stream().mapToInt(c -> c.recorded()).sum();
        if (fresh == 0) {
            return "nothing was new: all rows are known already";
        }
        return in.has(DRY_RUN)
                ? "a dry run, nothing was recorded; " + rows(fresh) + " would be"
                : rows(fresh) + " recorded as " + entries(report);
    }

    private static String ahead(Invocation in, Ahead.Found found) {
        Ahead.First first = found.first();
        return rows(found.rows())
                + (found.rows() == 1 ? " tells" : " tell")
                + " of a time that has not come yet"
                + (found.rows() == 1 ? ": " : ", the first is ")
                + first.at().shown()
                + ", "
                + first.heading()
                + " "
                + first.time()
                + (in.has(DRY_RUN)
                        ? "; if that is a slip, mend it before you import"
                        : "; if that is a slip, take that fact back (reverse ENTRY.LINE, as journal"
                                + " show has it) and import the mended row");
    }

    private static String rows(int count) {
        return count == 1 ? "1 row" : count + " rows";
    }

    private String entries(ImportReport report) {
        List<Site> all = new StaffBook(store.get()).sites();
        return report.entries().stream()
                .map(e -> "entry " + e.number() + " of site " + name(all, e.siteNo()))
                .collect(Collectors.joining(", "));
    }

    private static String name(List<Site> all, int siteNo) {
        return all.stream()
                .filter(site -> site.no() == siteNo)
                .map(Site::site)
                .findFirst()
                .orElse(String.valueOf(siteNo));
    }
}
