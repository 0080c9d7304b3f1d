package counterbench.durability;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.db.TestStores;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.intake.store.ImportPaper;
import counterbench.intake.store.LoadPack;
import counterbench.journal.store.JooqJournal;
import counterbench.journal.store.Verification;
import counterbench.judgement.Finding;
import counterbench.month.store.SiteBalances;
import counterbench.people.store.JooqSites;
import counterbench.review.store.Kept;
import counterbench.review.store.ReviewSite;
import counterbench.shared.TestSites;
import counterbench.sheets.poi.PoiSheets;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Four processes act at one site at the same time, on the same kits, jobs and parts, and end one
 * after another: 1,000 acts on each store. No act is lost or done twice, and what the accounts hold
 * is what a plain replay of the acknowledged acts gives.
 */
class ManyShellsTest {
    private static final int SHELLS = 4;

    /** The second does twice as many, and so on: the shell that serves the store may end first. */
    private static final int ACTS_OF_FIRST = 100;

    private static final int ACTS = ACTS_OF_FIRST * SHELLS * (SHELLS + 1) / 2;

    /** In the test with other work beside it. */
    private static final int ACTS_BESIDE = 30;

    private static final int IMPORTS = 3;
    private static final int ROWS = 100;

    private static final Map<String, Integer> CONTENTS = Map.of("CC-101", 1, "CC-102", 4);
    private static final String PACK =
            """
            campaign: CC-26-001
            title: Shared unit
            revision: A
            in-force-from: 2026-01-01
            vin-check-digit: false
            kit:
              part: CC-100-K
              contents:
                - {part: CC-101, name: Unit, quantity: 1}
                - {part: CC-102, name: Washer, quantity: 4, single-use: true}
            procedure:
              - {id: safe, do: Read the cautions, kind: safety}
            """;

    @TempDir Path folder;

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void no_act_is_lost_or_done_twice(TestStores stores) throws Exception {
        StoreAddress address = stores.address();
        try (Store store = TestStores.open(address)) {
            setUp(store);
        }
        List<String> said = new ArrayList<>();
        List<VictimProcess> clerks = new ArrayList<>();
        for (int seed = 1; seed <= SHELLS; seed++) {
            clerks.add(VictimProcess.clerk(address, seed, seed * ACTS_OF_FIRST).go());
        }
        for (VictimProcess clerk : clerks) {
            said.addAll(clerk.untilDone());
        }
        try (Store store = TestStores.open(address)) {
            checkJournal(store, said, ACTS);
            assertThat(said).anyMatch(line -> line.startsWith("refused kit-issued"));
            assertThat(said).anyMatch(line -> line.startsWith("refused kit-received"));
            assertThat(balances(store)).isEqualTo(replayed(said));
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void two_act_while_one_imports_and_one_reviews(TestStores stores) throws Exception {
        StoreAddress address = stores.address();
        try (Store importing = TestStores.open(address);
                Store reviewing = TestStores.open(address)) {
            setUp(importing);
            VictimProcess first = VictimProcess.clerk(address, 11, ACTS_BESIDE).go();
            VictimProcess second = VictimProcess.clerk(address, 12, ACTS_BESIDE).go();
            CompletableFuture<List<String>> imported =
                    CompletableFuture.supplyAsync(() -> importInTurns(importing));
            while (!imported.isDone()) {
                reviewed(reviewing);
            }
            List<String> said = new ArrayList<>(imported.get());
            said.addAll(first.untilDone());
            said.addAll(second.untilDone());

            checkJournal(importing, said, 2 * ACTS_BESIDE + IMPORTS);
            assertThat(balances(importing)).isEqualTo(replayed(said));
            Instant now = Instant.now();
            assertThat(reviewed(reviewing))
                    .containsExactlyInAnyOrderElementsOf(
                            new ReviewSite(reviewing)
                                    .run(TestSites.NORTH, now, ReviewSite.NEWEST, n -> {}));
        }
    }

    private static List<Finding> reviewed(Store store) {
        return Kept.review(store, TestSites.NORTH, Instant.now()).findings();
    }

    /** Sheets of receipts, each of a few hundred rows; said as the clerks say their acts. */
    private List<String> importInTurns(Store store) {
        List<String> said = new ArrayList<>();
        for (int i = 1; i <= IMPORTS; i++) {
            StringBuilder rows = new StringBuilder("ref,part,quantity,received_at\n");
            for (int row = 0; row < ROWS; row++) {
                rows.append("D-%d-%d,CC-901,1,2026-02-01 08:00\n".formatted(i, row));
            }
            said.add(imported(store, i, rows.toString()) + " received CC-901 " + ROWS);
        }
        return said;
    }

    private long imported(Store store, int number, String rows) {
        try {
            Path paper = Files.createDirectories(folder.resolve("paper" + number));
            Files.writeString(paper.resolve("receipts.csv"), rows);
            var request =
                    new ImportPaper.Request(
                            paper, TestSites.NORTH, "Hal", Instant.now(), false, false);
            var report = new ImportPaper(store, PoiSheets.files()).run(request, n -> {});
            assertThat(report.problems()).isEmpty();
            return report.entries().get(0).number();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void setUp(Store store) throws Exception {
        store.run(sql -> JooqSites.add(sql, TestSites.NORTH));
        Path pack = Files.writeString(folder.resolve("pack.yaml"), PACK);
        new LoadPack(store, PoiSheets.files()).run(pack, TestSites.NORTH, "Ada", Instant.EPOCH);
        List<FactRow> rows = new ArrayList<>();
        rows.add(FactRow.of(FactKind.PEOPLE).with("name", "Hal").with("roles", "parts"));
        Clerk.LOOSE.forEach(
                part ->
                        rows.add(
                                FactRow.of(FactKind.PARTS_LIST)
                                        .with("part", part)
                                        .with("name", part)
                                        .with("unit", "each")));
        IntStream.range(0, Clerk.JOBS).forEach(job -> rows.add(job("J-" + job)));
        new JooqJournal(store).record(Victim.draft(TestSites.NORTH), rows);
    }

    private static FactRow job(String name) {
        return FactRow.of(FactKind.JOBS)
                .with("job", name)
                .with("campaign", "CC-26-001")
                .with("vin", "00000000000000000")
                .with("opened_at", Instant.EPOCH);
    }

    private static void checkJournal(Store store, List<String> said, int acts) {
        Verification.Outcome outcome =
                store.readSnapshot(sql -> Verification.of(sql, TestSites.NORTH));
        assertThat(outcome.broken()).isEmpty();
        assertThat(said).hasSize(acts);
        List<Long> numbers =
                said.stream()
                        .filter(line -> !line.startsWith("refused"))
                        .map(line -> Long.valueOf(line.split(" ", -1)[0]))
                        .sorted()
                        .toList();
        assertThat(numbers).doesNotHaveDuplicates();
        long before = outcome.entries() - numbers.size();
        assertThat(numbers)
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, numbers.size())
                                .mapToObj(i -> before + i)
                                .toList());
        assertThat(said).allMatch(line -> !line.startsWith("refused") || line.contains("; "));
    }

    private static Map<String, Integer> balances(Store store) {
        Map<String, Integer> balances = new TreeMap<>();
        new SiteBalances(store)
                .each(
                        TestSites.NORTH,
                        Instant.now(),
                        ReviewSite.NEWEST,
                        account -> account.isStock(),
                        row ->
                                balances.put(
                                        row.account() + " " + row.part(),
                                        row.quantity().amount().intValueExact()));
        return balances;
    }

    /** What the acknowledged acts come to, in the order of their entries. */
    private static Map<String, Integer> replayed(List<String> said) {
        Map<Long, String[]> acts = new TreeMap<>();
        said.stream()
                .filter(line -> !line.startsWith("refused"))
                .map(line -> line.split(" ", -1))
                .forEach(words -> acts.put(Long.valueOf(words[0]), words));
        Map<String, Integer> held = new TreeMap<>();
        for (String[] act : acts.values()) {
            switch (act[1]) {
                case "kit-received" -> CONTENTS.forEach((p, n) -> add(held, kit(act[2], p), n));
                case "kit-issued" ->
                        CONTENTS.forEach(
                                (p, n) -> {
                                    add(held, kit(act[2], p), -n);
                                    add(held, bench(act[3], p), n);
                                });
                case "received" -> add(held, "STORE " + act[2], number(act[3]));
                default -> {
                    add(held, "STORE " + act[2], -number(act[3]));
                    add(held, bench(act[4], act[2]), number(act[3]));
                }
            }
        }
        assertThat(held.values()).allMatch(n -> n >= 0);
        held.values().removeIf(n -> n == 0);
        return held;
    }

    private static void add(Map<String, Integer> held, String where, int quantity) {
        held.merge(where, quantity, Integer::sum);
        assertThat(Objects.requireNonNull(held.get(where))).as(where).isNotNegative();
    }

    private static String kit(String kit, String part) {
        return "KIT(" + kit + ") " + part;
    }

    private static String bench(String job, String part) {
        return "BENCH(" + job + ") " + part;
    }

    private static int number(String word) {
        return Integer.parseInt(word);
    }
}
