package counterbench.durability;

import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.db.TestStores;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.facts.TestRows;
import counterbench.intake.store.ImportPaper;
import counterbench.journal.Draft;
import counterbench.journal.Entry;
import counterbench.journal.store.JooqJournal;
import counterbench.people.store.StaffBook;
import counterbench.shared.Site;
import counterbench.sheets.poi.PoiSheets;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/**
 * The process that is killed. It waits for a line of input, opens the store, and then records
 * entries or imports paper, and says on its output what has been acknowledged.
 */
final class Victim {
    private static final Instant NOW = Instant.parse("2026-03-05T20:20:00Z");

    private Victim() {}

    /**
     * Runs until it is killed, or the import is done.
     *
     * @param args the home folder, the server's address or nothing, and the folder of paper if it
     *     is to import
     */
    public static void main(String[] args) throws Exception {
        if (System.in.read() < 0) {
            return;
        }
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        try (Store store = TestStores.open(StoreAddress.of(Path.of(args[0]), args[1]))) {
            Site site = new StaffBook(store).sites().get(0);
            if (args.length > 2) {
                takeIn(store, site, Path.of(args[2]), out);
            } else {
                record(store, site, out);
            }
        }
    }

    private static void record(Store store, Site site, PrintStream out) {
        JooqJournal journal = new JooqJournal(store);
        for (int i = 0; ; i++) {
            Entry entry =
                    journal.record(
                            draft(site), act("J-" + ProcessHandle.current().pid() + "-" + i));
            out.println(entry.number() + " " + entry.id() + " " + entry.hash());
        }
    }

    private static void takeIn(Store store, Site site, Path paper, PrintStream out) {
        var request = new ImportPaper.Request(paper, site, "Ada", Instant.now(), false, false);
        new ImportPaper(store, PoiSheets.files()).run(request, out::println);
        out.println("done");
    }

    static Draft draft(Site site) {
        return Draft.of(site, NOW, "Ada", "test", "test");
    }

    /** What one act records. */
    static List<FactRow> act(String job) {
        return List.of(job(job), use(job, "QM-1"), use(job, "QM-2"), use(job, "QM-3"));
    }

    private static FactRow job(String job) {
        return TestRows.row(FactKind.JOBS)
                .with("job", job)
                .with("campaign", "QM-26-099")
                .with("vin", "00000000000000000")
                .with("opened_at", NOW);
    }

    private static FactRow use(String job, String part) {
        return TestRows.row(FactKind.USES)
                .with("job", job)
                .with("part", part)
                .with("quantity", BigDecimal.ONE)
                .with("condition", "new")
                .with("at", NOW);
    }
}
