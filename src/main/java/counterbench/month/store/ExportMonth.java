package counterbench.month.store;

import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.journal.Seal;
import counterbench.journal.store.EntryReader;
import counterbench.judgement.Finding;
import counterbench.month.sheet.Book;
import counterbench.month.sheet.BookKind;
import counterbench.month.sheet.BookNotes;
import counterbench.month.sheet.PartNames;
import counterbench.month.sheet.PartsBook;
import counterbench.month.sheet.SiteMonth;
import counterbench.month.sheet.WarrantyBook;
import counterbench.review.Settlements;
import counterbench.review.Terms;
import counterbench.review.store.FindingBook;
import counterbench.review.store.ReviewSite;
import counterbench.review.store.SiteScan;
import counterbench.shared.Progress;
import counterbench.shared.Site;
import counterbench.sheets.report.Report;
import counterbench.sheets.report.ReportLayout;
import counterbench.sheets.report.WorkbookSink;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Writes a monthly workbook, all of it as known at the newest entry of the site's journal when it
 * begins, whatever others record meanwhile.
 */
public final class ExportMonth {
    private final Store store;
    private final WorkbookSink sink;

    public ExportMonth(Store store, WorkbookSink sink) {
        this.store = store;
        this.sink = sink;
    }

    /**
     * What is asked for.
     *
     * @param now the time of the export
     * @param file the workbook, written over an older one of that name
     */
    public record Request(
            BookKind kind, SiteMonth period, ReportLayout layout, Instant now, Path file) {
        public Request {
            Objects.requireNonNull(kind, "kind");
            Objects.requireNonNull(period, "period");
            Objects.requireNonNull(layout, "layout");
            Objects.requireNonNull(now, "now");
            Objects.requireNonNull(file, "file");
        }

        Request asOf(Instant at) {
            return new Request(kind, period, layout, at, file);
        }
    }

    /** Writes the workbook; says which entry was the newest, if there was one. */
    public Optional<Entry> run(Request request, Progress progress) {
        Site site = request.period().site();
        Optional<Seal> seal = request.period().sealed().of(request.period().month());
        if (seal.isPresent()) {
            Optional<Entry> sealing =
                    store.read(sql -> EntryReader.byNumber(sql, site.no(), seal.get().entry()));
            write(request.asOf(seal.get().at()), sealing, progress);
            return sealing;
        }
        Optional<Entry> newest =
                store.read(sql -> EntryReader.newest(sql, site.no(), 1)).stream().findFirst();
        write(request, newest, progress);
        return newest;
    }

    private void write(Request request, Optional<Entry> newest, Progress progress) {
        Site site = request.period().site();
        long known = newest.map(Entry::number).orElse(0L);
        try (SiteScan scan = new SiteScan(store, site, request.now(), known);
                Book book = book(request, scan.terms(), known)) {
            JobSteps steps = new JobSteps(progress, "gathering rows of " + site.site());
            long undated = gather(request, known, scan, book, steps);
            opening(request.period(), book);
            BookNotes notes =
                    new BookNotes(
                            request.kind(),
                            request.period(),
                            request.now(),
                            newest.orElse(null),
                            scan.terms().packs(),
                            undated);
            sink.write(report(request, book, notes), request.file());
        }
    }

    /** Goes through the site once; gives how many findings count in no month. */
    private long gather(Request request, long known, SiteScan scan, Book book, JobSteps steps) {
        Site site = scan.site();
        Settlements settled = new FindingBook(store).settled(site, request.now(), known);
        Predicate<Finding> counts =
                new MonthFindings(store, site, known).countsIn(request.period().month());
        long[] undated = {0};
        scan.eachCreditOfNoClaim(book::addOfNoClaim);
        new ReviewSite(store)
                .run(
                        scan,
                        steps,
                        finding -> {
                            undated[0] += finding.month() == null ? 1 : 0;
                            book.add(
                                    finding,
                                    settled.of(finding).orElse(null),
                                    counts.test(finding));
                        },
                        book::add);
        book.end(scan.storeOnly(), scan.looseCounts());
        return undated[0];
    }

    private void opening(SiteMonth period, Book book) {
        if (book instanceof PartsBook parts) {
            OpeningScan.fill(
                    store,
                    period.site(),
                    period.month(),
                    period.sealed(),
                    parts.account(),
                    parts::addTakenBack);
        }
    }

    private Book book(Request request, Terms terms, long known) {
        return switch (request.kind()) {
            case PARTS ->
                    new PartsBook(
                            request.period(), terms, names(request, terms, known), request.now());
            case WARRANTY -> new WarrantyBook(request.period(), terms, request.now());
        };
    }

    private PartNames names(Request request, Terms terms, long known) {
        return new PartNames(
                terms.packs(),
                store.read(sql -> PartList.names(sql, request.period().site(), known)),
                terms.partUnits());
    }

    private static Report report(Request request, Book book, BookNotes notes) {
        Site site = request.period().site();
        return new Report(
                request.layout(),
                notes.subject(),
                site.zone(),
                site.currency(),
                request.now(),
                book.rows(),
                notes.lines());
    }
}
