package counterbench.durability;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.acts.JobState;
import counterbench.acts.Named;
import counterbench.acts.bench.Progress;
import counterbench.acts.bench.StepProgress;
import counterbench.acts.store.ReadSituation;
import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.db.TestStores;
import counterbench.journal.store.Verification;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.shell.BaseCommand;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import counterbench.shell.bench.JobOpenCommand;
import counterbench.shell.counter.KitReceiveCommand;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A bench is killed at random moments of a batch of scans, and given the same batch again each
 * time: every acknowledged line is there, none is there twice, and it goes on at the same place.
 */
class KilledBenchTest {
    private static final int KILLS = 2;
    private static final Pattern ENTRY = Pattern.compile("entry (\\d+) of site");
    private static final List<String> BATCH =
            List.of(
                    "FP-9001",
                    "",
                    "cold",
                    "relief 4.5 min",
                    "core NC-9001 7P1",
                    "drain",
                    "mount",
                    "47.4",
                    "46.8",
                    "47.1",
                    "21",
                    "HB-3011",
                    "HB-3012",
                    "HB-3013 3",
                    "HB-3013",
                    "witness",
                    "prime 2.5",
                    "345",
                    "700");

    private final long seed = System.nanoTime();

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void what_a_bench_acknowledged_is_there_once_and_it_goes_on_at_the_same_place(TestStores kind)
            throws Exception {
        StoreAddress address = kind.address();
        try (Store store = TestStores.open(address)) {
            open(Larkmere.withPacks(store));
        }
        Random random = new Random(seed);
        Set<Long> acknowledged = new TreeSet<>();
        for (int kill = 1; kill <= KILLS; kill++) {
            acknowledged.addAll(killed(address, random));
        }
        acknowledged.addAll(toTheEnd(address));
        try (Store store = TestStores.open(address)) {
            check(store, acknowledged);
        }
    }

    private static void open(Larkmere larkmere) {
        FakeShell shell =
                larkmere.shellOf(
                        new Person("Maren", Set.of(Role.LEAD)),
                        new BaseCommand[] {
                            new KitReceiveCommand(larkmere::store, larkmere.sites()),
                            new JobOpenCommand(larkmere::store, larkmere.sites())
                        });
        List.of(
                        "kit receive FP-9001 --part HB-3010-K",
                        "job open N-9001 --campaign HB-0417 --vin 0LKPT6D41NS002209")
                .forEach(
                        line -> {
                            var output = shell.line(line);
                            assertThat(output.status()).as(output.screen()).isEqualTo(Status.DONE);
                        });
    }

    private Set<Long> killed(StoreAddress address, Random random) throws Exception {
        try (VictimProcess bench = VictimProcess.bench(address, "N-9001").go()) {
            bench.type(BATCH);
            List<String> said = new ArrayList<>();
            int lines = 1 + random.nextInt(BATCH.size() - 4);
            while (said.stream().filter(l -> l.startsWith("line ")).count() < lines) {
                String line = bench.next();
                assertThat(line).as("it died by itself after %s", said).isNotNull();
                said.add(line);
            }
            said.addAll(bench.kill());
            return entries(said);
        }
    }

    private static Set<Long> toTheEnd(StoreAddress address) throws Exception {
        try (VictimProcess bench = VictimProcess.bench(address, "N-9001").go()) {
            bench.type(BATCH);
            List<String> said = bench.untilDone();
            assertThat(said).noneMatch(line -> line.startsWith("stopped"));
            return entries(said);
        }
    }

    private static Set<Long> entries(List<String> said) {
        Set<Long> entries = new TreeSet<>();
        for (String line : said) {
            Matcher entry = ENTRY.matcher(line);
            if (entry.find()) {
                entries.add(Long.valueOf(entry.group(1)));
            }
        }
        return entries;
    }

    private void check(Store store, Set<Long> acknowledged) {
        Verification.Outcome outcome =
                store.readSnapshot(sql -> Verification.of(sql, Larkmere.NORTH));
        assertThat(outcome.broken()).as("seed " + seed).isEmpty();
        JobState job =
                new ReadSituation(store)
                        .run(Larkmere.NORTH, Larkmere.AS_OF, Named.job("N-9001"))
                        .job("N-9001");
        // "mount" alone records nothing.
        int made = BATCH.size() - 1;
        assertThat(acknowledged).as("seed " + seed).hasSize(made);
        assertThat(outcome.entries())
                .as("seed " + seed)
                .isEqualTo(acknowledged.stream().max(Long::compare).orElseThrow());
        assertThat(job.file().marks()).as("seed " + seed).hasSize(11);
        assertThat(job.onVehicle(Larkmere.AS_OF).fittedNew("HB-3013").toString()).isEqualTo("4");
        assertThat(Progress.of(job).steps()).allMatch(StepProgress::isComplete);
    }
}
