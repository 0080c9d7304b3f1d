package counterbench.durability;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.db.TestStores;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.intake.store.LoadPack;
import counterbench.journal.store.JooqJournal;
import counterbench.journal.store.Verification;
import counterbench.month.store.SiteBalances;
import counterbench.people.store.JooqSites;
import counterbench.review.store.ReviewSite;
import counterbench.shared.TestSites;
import counterbench.sheets.poi.PoiSheets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
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
            checkJournal(store, said);
            assertThat(balances(store)).isEqualTo(replayed(said));
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

    private static void checkJournal(Store store, List<String> said) {
        Verification.Outcome outcome =
                store.readSnapshot(sql -> Verification.of(sql, TestSites.NORTH));
        assertThat(outcome.broken()).isEmpty();
        assertThat(said).hasSize(ACTS);
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
        assertThat(said).anyMatch(line -> line.startsWith("refused kit-issued"));
        assertThat(said).anyMatch(line -> line.startsWith("refused kit-received"));
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
