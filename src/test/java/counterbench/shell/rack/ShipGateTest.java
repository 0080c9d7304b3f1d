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
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * No sequence of commands gets a core past the gate that a stop stands against. Random commands are
 * typed: at the clock or for earlier, by two yards, with imports and reversals between. After each
 * shipment that left, the whole site is reviewed by the other way, which knows nothing of the gate.
 */
class ShipGateTest {
    private static final int SEEDS = 10;
    private static final int ROUNDS = 3;

    private int left;
    private int refused;

    @Test
    void no_sequence_of_commands_gets_a_stopped_core_shipped_without_an_override(
            @TempDir Path folder) {
        try (Larkmere larkmere = Larkmere.withPacks(TestStores.H2)) {
            open(larkmere);
            for (int seed = 1; seed <= SEEDS; seed++) {
                run(larkmere, new GateLines(seed, folder));
            }
            assertThat(left).as("shipments that left").isGreaterThan(SEEDS / 2);
            assertThat(refused).as("shipments that were refused").isGreaterThan(SEEDS / 2);
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

    private void run(Larkmere larkmere, GateLines lines) {
        FakeShell maren = RackShells.maren(larkmere);
        StringBuilder typed = new StringBuilder("seed " + lines.seed());
        maren.at(lines.now());
        lines.removals().forEach(line -> RackShells.done(maren, line));
        for (int round = 1; round <= ROUNDS; round++) {
            RackShells.done(maren.at(lines.now()), lines.opening());
            for (String line = lines.next(); line != null; line = lines.next()) {
                var output = maren.at(lines.now()).line(line);
                lines.saw(output.screen());
                typed.append('\n').append(lines.now()).append(' ').append(line).append(": ");
                typed.append(output.status());
                if (line.startsWith("ship ")) {
                    check(larkmere, lines, output.status(), typed.toString());
                }
            }
        }
    }

    private void check(Larkmere larkmere, GateLines lines, Status status, String typed) {
        if (status != Status.DONE) {
            refused++;
            return;
        }
        left++;
        Named named = Named.NOTHING.withShipment(lines.shipment());
        List<String> tags =
                new ReadSituation(larkmere.store())
                                .run(Larkmere.NORTH, lines.now(), named)
                                .shipment(lines.shipment())
                                .cores()
                                .stream()
                                .map(core -> core.core().core())
                                .toList();
        Stream<Finding> found =
                new ReviewSite(larkmere.store())
                        .run(Larkmere.NORTH, lines.now(), ReviewSite.NEWEST, jobs -> {}).stream();
        assertThat(
                        found.filter(f -> f.rule().severity() == Severity.STOP)
                                .filter(f -> tags.contains(f.subject().name())))
                .as(typed)
                .isEmpty();
        assertThat(tags).as(typed).isNotEmpty();
    }
}
