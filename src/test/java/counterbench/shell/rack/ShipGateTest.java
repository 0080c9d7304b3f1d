package counterbench.shell.rack;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.acts.Named;
import counterbench.acts.store.ReadSituation;
import counterbench.db.TestStores;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.Draft;
import counterbench.journal.store.JooqJournal;
import counterbench.judgement.Finding;
import counterbench.judgement.Severity;
import counterbench.review.store.ReviewSite;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * No sequence of commands gets a core past the gate that a stop stands against. Random commands are
 * typed, and after each shipment that left, the whole site is reviewed by the other way, which
 * knows nothing of the gate.
 */
class ShipGateTest {
    private static final int SEEDS = 8;
    private static final int COMMANDS = 14;
    private static final List<Integer> MINUTES = List.of(0, 5, 17, 18, 18, 19);

    private int left;
    private int refused;

    @Test
    void no_sequence_of_commands_gets_a_stopped_core_shipped_without_an_override() {
        try (Larkmere larkmere = Larkmere.withPacks(TestStores.H2)) {
            open(larkmere);
            for (int seed = 1; seed <= SEEDS; seed++) {
                run(larkmere, seed);
            }
            assertThat(left).as("shipments that left").isPositive();
            assertThat(refused).as("shipments that were refused").isPositive();
        }
    }

    private static void open(Larkmere larkmere) {
        FactRow row =
                FactRow.of(FactKind.JOBS)
                        .with("job", "N-900")
                        .with("campaign", "HB-0417")
                        .with("vin", "0LKSP5D27RA002587")
                        .with("opened_at", Larkmere.AS_OF.minusSeconds(3600));
        new JooqJournal(larkmere.store())
                .record(
                        Draft.of(Larkmere.NORTH, Larkmere.AS_OF, "Otis", "job open", "job open"),
                        List.of(row));
    }

    private void run(Larkmere larkmere, int seed) {
        Random dice = new Random(seed);
        FakeShell hal = RackShells.hal(larkmere);
        Instant now = Larkmere.AS_OF.plus(Duration.ofDays(seed));
        hal.at(now);
        String shipment = "G-" + seed;
        hal.line("shipment open " + shipment + " --carrier C --tracking T" + seed);
        for (int core = 1; core <= 2; core++) {
            hal.line("core remove " + tag(seed, core) + " --job N-900 --serial " + seed + core);
        }
        StringBuilder typed = new StringBuilder("seed " + seed);
        for (int i = 0; i < COMMANDS; i++) {
            for (String line : lines(dice, shipment, tag(seed, 1 + dice.nextInt(2)))) {
                now = now.plus(Duration.ofMinutes(MINUTES.get(dice.nextInt(MINUTES.size()))));
                Status status = hal.at(now).line(line).status();
                typed.append('\n').append(now).append(' ').append(line).append(": ").append(status);
                if (line.startsWith("ship ")) {
                    check(larkmere, shipment, status, now, typed.toString());
                }
            }
        }
    }

    /** Mostly one line of any kind; now and then all that a careful clerk does, one by one. */
    private static List<String> lines(Random dice, String shipment, String tag) {
        return dice.nextInt(4) > 0
                ? List.of(line(dice, shipment, tag))
                : List.of(
                        "unplug " + tag,
                        "drain begin " + tag,
                        "drain end " + tag,
                        "plug " + tag,
                        "pack " + tag + " --packaging carton",
                        "shipment add " + shipment + " " + tag,
                        "ship " + shipment);
    }

    private static String tag(int seed, int core) {
        return "GC-" + seed + "-" + core;
    }

    private static String line(Random dice, String shipment, String tag) {
        List<String> lines =
                List.of(
                        "drain begin " + tag,
                        "drain end " + tag,
                        "plug " + tag,
                        "plug " + tag + " 1",
                        "unplug " + tag,
                        "pack " + tag + " --packaging carton",
                        "shipment add " + shipment + " " + tag,
                        "shipment take-off " + shipment + " " + tag,
                        "drain begin " + tag,
                        "drain end " + tag,
                        "plug " + tag,
                        "ship " + shipment);
        return lines.get(dice.nextInt(lines.size()));
    }

    private void check(
            Larkmere larkmere, String shipment, Status status, Instant now, String typed) {
        if (status != Status.DONE) {
            refused++;
            return;
        }
        left++;
        Named named = Named.NOTHING.withShipment(shipment);
        List<String> tags =
                new ReadSituation(larkmere.store())
                        .run(Larkmere.NORTH, now, named).shipment(shipment).cores().stream()
                                .map(core -> core.core().core())
                                .toList();
        Stream<Finding> found =
                new ReviewSite(larkmere.store())
                        .run(Larkmere.NORTH, now, ReviewSite.NEWEST, jobs -> {}).stream();
        assertThat(
                        found.filter(f -> f.rule().severity() == Severity.STOP)
                                .filter(f -> tags.contains(f.subject().name())))
                .as(typed)
                .isEmpty();
        assertThat(tags).as(typed).isNotEmpty();
    }
}
