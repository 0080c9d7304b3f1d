package counterbench.review.store;

import static counterbench.review.store.Garages.lines;
import static counterbench.review.store.Garages.without;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.care.ReversalRequest;
import counterbench.care.store.ReverseEntry;
import counterbench.db.Store;
import counterbench.db.TestStores;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.Draft;
import counterbench.journal.Entry;
import counterbench.journal.store.EntryReader;
import counterbench.journal.store.JooqJournal;
import counterbench.judgement.Finding;
import counterbench.oracle.Garage;
import counterbench.oracle.GarageOptions;
import counterbench.oracle.GarageWriter;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The kept review says what a full one says, whatever came since the last time. */
class KeptReviewTest {
    /** Sheets in the order in which their paper comes in; what one names has come before. */
    private static final List<List<String>> DELIVERIES =
            List.of(
                    List.of("people", "parts", "instruments", "rates", "vehicles", "jobs"),
                    List.of("kits", "issues", "cores", "uses-1", "receipts"),
                    List.of("uses-2", "marks-1", "shipments"),
                    List.of("moves", "counts", "calibrations", "marks-2"),
                    List.of("acknowledgements", "claims"),
                    List.of("credits", "orders", "contacts"));

    private static final int REVERSALS = 24;

    /** So few findings in one transaction that a whole review needs several. */
    private static final int PIECE = 7;

    private static final Person LEAD = new Person("Zelda", Set.of(Role.LEAD));

    @TempDir Path folder;

    @ParameterizedTest
    @CsvSource({"H2,11,90", "POSTGRES,13,60"})
    void it_equals_a_full_review_after_every_delivery(TestStores kind, long seed, int jobs)
            throws IOException {
        Garage garage = GarageWriter.write(seed, GarageOptions.of(jobs).scattered(2), folder);
        try (Store store = kind.open()) {
            Garages.setUp(store, garage);
            Instant now = garage.asOf().minus(Duration.ofDays(40));
            for (List<String> delivery : DELIVERIES) {
                for (String name : delivery) {
                    Garages.imported(store, garage, folderOf(garage, name));
                    compare(store, garage, now, name + ", seed " + seed);
                }
                now = now.plus(Duration.ofDays(7));
                compare(store, garage, now, delivery + " a week later, seed " + seed);
            }
            assertThat(Kept.review(store, Garages.site(garage), now).judgedAgain())
                    .as("nothing has come since")
                    .isZero();
        }
    }

    /** Whatever is taken back, line by line: what it touched is judged again, and no more. */
    @ParameterizedTest
    @CsvSource({"H2,17,60", "POSTGRES,19,40"})
    void it_equals_a_full_review_after_every_reversal(TestStores kind, long seed, int jobs)
            throws IOException {
        Garage garage = GarageWriter.write(seed, GarageOptions.of(jobs).scattered(2), folder);
        try (Store store = kind.open()) {
            Garages.setUp(store, garage);
            Garages.imported(store, garage, garage.sheets());
            addLead(store, garage);
            Site site = Garages.site(garage);
            compare(store, garage, garage.asOf(), "all is in, seed " + seed);
            Entry paper = store.read(sql -> EntryReader.newest(sql, site.no(), 2)).get(1);
            Random random = new Random(seed);
            int taken = 0;
            long again = 0;
            for (int i = 0; i < REVERSALS; i++) {
                String address = paper.number() + "." + (1 + random.nextInt(paper.factCount()));
                if (isTakenBack(store, garage, address)) {
                    taken++;
                    again += judgedAgain(store, garage);
                    compare(store, garage, garage.asOf(), address + " is back, seed " + seed);
                }
            }
            assertThat(taken).as("reversals, seed " + seed).isGreaterThan(REVERSALS / 3);
            assertThat(again).as("jobs judged again").isLessThan((long) taken * jobs / 2);
        }
    }

    private static long judgedAgain(Store store, Garage garage) {
        return Kept.review(store, Garages.site(garage), garage.asOf()).judgedAgain();
    }

    private static void addLead(Store store, Garage garage) {
        Draft draft =
                Draft.of(
                        Garages.site(garage),
                        Garages.RECORDED_AT,
                        LEAD.name(),
                        "person add",
                        "person add " + LEAD.name());
        FactRow row = FactRow.of(FactKind.PEOPLE).with("name", LEAD.name()).with("roles", "lead");
        new JooqJournal(store).record(draft, List.of(row));
    }

    private static boolean isTakenBack(Store store, Garage garage, String address) {
        try {
            new ReverseEntry(store)
                    .run(
                            ReversalRequest.of(address, "it was a slip"),
                            Garages.site(garage),
                            LEAD,
                            Garages.RECORDED_AT,
                            "reverse " + address);
            return true;
        } catch (Refused e) {
            return false;
        }
    }

    private static void compare(Store store, Garage garage, Instant now, String when) {
        Site site = Garages.site(garage);
        List<Finding> kept = Kept.review(new KeptReview(store, PIECE), site, now).findings();
        Set<String> ours = lines(kept, KeptReviewTest::whole);
        Set<String> full =
                lines(
                        new ReviewSite(store).run(site, now, ReviewSite.NEWEST, n -> {}),
                        KeptReviewTest::whole);
        assertThat(without(full, ours)).as("missing after %s", when).isEmpty();
        assertThat(without(ours, full)).as("too many after %s", when).isEmpty();
        assertThat(kept).hasSameSizeAs(ours);
    }

    private static String whole(Finding finding) {
        return Garages.line(finding) + "|" + finding.evidence();
    }

    /** A folder with only the files of that name, so that they come in together. */
    private Path folderOf(Garage garage, String name) throws IOException {
        Path only = Files.createDirectory(folder.resolve("only-" + name));
        try (Stream<Path> files = Files.list(garage.sheets())) {
            for (Path file : files.filter(f -> isOf(f, name)).toList()) {
                Files.copy(file, only.resolve(file.getFileName()));
            }
        }
        return only;
    }

    private static boolean isOf(Path file, String name) {
        String own = String.valueOf(file.getFileName());
        return own.equals(name + ".csv") || own.startsWith(name + "-");
    }
}
