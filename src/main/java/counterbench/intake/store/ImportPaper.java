package counterbench.intake.store;

import counterbench.campaign.Pack;
import counterbench.db.Store;
import counterbench.facts.FactRow;
import counterbench.intake.ImportReport;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.sheets.Sheet;
import counterbench.sheets.SheetFiles;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;

/**
 * Imports a file or a folder of sheets: all of it or nothing. Rows that are known already are
 * counted and left out; one row that cannot be taken refuses the whole.
 */
public final class ImportPaper {
    /** The kind of the entries that imports make. */
    public static final String ENTRY_KIND = "import";

    private static final int TRIES = 3;

    private final Store store;
    private final SheetFiles files;

    /**
     * What is to be imported.
     *
     * @param site whose paper it is, where a row does not say
     * @param person who imports
     * @param now the time at which it is recorded
     * @param dryRun whether to do all but the recording
     * @param asNew whether rows that look like corrections are new facts
     */
    public record Request(
            Path path, Site site, String person, Instant now, boolean dryRun, boolean asNew) {}

    /**
     * Facts that are recorded with the sheets, in the same entry.
     *
     * @param kind the kind of the entry
     * @param facts the facts, which are not checked again
     * @param packs the packs among them
     */
    public record Extra(String kind, List<FactRow> facts, List<Pack> packs) {
        static final Extra NONE = new Extra(ENTRY_KIND, List.of(), List.of());
    }

    public ImportPaper(Store store, SheetFiles files) {
        this.store = store;
        this.files = files;
    }

    /**
     * Imports.
     *
     * @param progress is told after every row how many have been read
     * @throws Refused if a file cannot be read as sheets, or another import is running at the site
     */
    public ImportReport run(Request request, IntConsumer progress) {
        return run(request, files.find(request.path()), progress);
    }

    /**
     * Imports sheets that have been found.
     *
     * @throws Refused as {@link #run(Request, IntConsumer)}
     */
    public ImportReport run(Request request, List<Sheet> sheets, IntConsumer progress) {
        return run(request, sheets, Extra.NONE, progress);
    }

    /**
     * Imports sheets that have been found, together with facts that come with them.
     *
     * @throws Refused as {@link #run(Request, IntConsumer)}
     */
    public ImportReport run(
            Request request, List<Sheet> sheets, Extra extra, IntConsumer progress) {
        List<Sheet> sorted = sheets.stream().sorted(Comparator.comparing(Sheet::kind)).toList();
        for (int tries = 0; tries < TRIES; tries++) {
            try (Attempt attempt = new Attempt(store, files, request, extra, progress)) {
                Optional<ImportReport> report = attempt.run(sorted);
                if (report.isPresent()) {
                    return report.get();
                }
            }
        }
        throw new Refused(
                "import \"" + request.path() + "\"",
                "other people recorded the same jobs, kits or claims meanwhile, "
                        + TRIES
                        + " times",
                "import again when they are done");
    }
}
