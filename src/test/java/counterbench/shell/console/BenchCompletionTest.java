package counterbench.shell.console;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.printing.pdf.PdfPrinter;
import counterbench.shell.Commands;
import counterbench.shell.Larkmere;
import counterbench.shell.bench.BenchCommand;
import counterbench.shell.bench.FitCommand;
import counterbench.shell.bench.MarkCommand;
import counterbench.shell.bench.PutBackCommand;
import counterbench.shell.counter.KitIssueCommand;
import counterbench.shell.labels.LabelNamedCommand;
import counterbench.shell.labels.LabelPartCommand;
import counterbench.shell.labels.LabelPress;
import counterbench.shell.labels.NamedThing;
import counterbench.shell.rack.DrainEndCommand;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the commands of the bench offer at each place, from the store as it is. */
class BenchCompletionTest {
    private static List<String> offered(Commands commands, String begun, String... before) {
        return new Completion(commands, () -> Optional.of("NORTH"))
                .offers(List.of(before), begun)
                .map(Offer::word)
                .filter(word -> word.startsWith(begun))
                .toList();
    }

    @Test
    void names_fit_their_place_and_the_job_that_the_line_names() {
        try (Larkmere larkmere = Larkmere.full(TestStores.H2)) {
            Commands commands =
                    larkmere.shellOf(
                                    Larkmere.OTIS,
                                    new BenchCommand(larkmere::store, larkmere.sites()),
                                    new FitCommand(larkmere::store, larkmere.sites()),
                                    new PutBackCommand(larkmere::store, larkmere.sites()),
                                    new MarkCommand(larkmere::store, larkmere.sites()),
                                    new KitIssueCommand(larkmere::store, larkmere.sites()),
                                    new DrainEndCommand(larkmere::store, larkmere.sites()))
                            .commands();

            assertThat(offered(commands, "N-", "bench"))
                    .containsExactlyInAnyOrder("N-155", "N-168", "N-169");
            assertThat(offered(commands, "HB-512", "fit", "N-168"))
                    .containsExactly("HB-5121", "HB-5122", "HB-5123", "HB-5124", "HB-5125");
            assertThat(offered(commands, "HB-512", "fit", "N-169")).isEmpty();
            assertThat(offered(commands, "", "fit", "N-168", "HB-5121", "--kit"))
                    .containsExactly("RD-0544", "RD-0545");
            assertThat(offered(commands, "", "put-back", "N-155", "--kit"))
                    .containsExactly("FP-1042");
            assertThat(offered(commands, "m", "mark", "N-169")).containsExactly("mount");
            assertThat(offered(commands, "", "mark", "N-169", "mount", "--fastener"))
                    .containsExactly("1", "2", "3");
            assertThat(offered(commands, "TW", "mark", "N-169", "mount", "47", "--with"))
                    .containsExactly("TW-1", "TW-2");
            assertThat(offered(commands, "FP", "kit", "issue"))
                    .containsExactly("FP-1052", "FP-1053");
            assertThat(offered(commands, "NC", "drain", "end")).containsExactly("NC-0075");
        }
    }

    @Test
    void labels_offer_what_they_can_be_put_on() {
        try (Larkmere larkmere = Larkmere.full(TestStores.H2)) {
            LabelPress press = new LabelPress(larkmere::store, larkmere.sites(), PdfPrinter::new);
            Commands commands =
                    larkmere.shellOf(
                                    Larkmere.OTIS,
                                    new LabelNamedCommand(NamedThing.KIT, press),
                                    new LabelNamedCommand(NamedThing.JOB, press),
                                    new LabelNamedCommand(NamedThing.CORE, press),
                                    new LabelNamedCommand(NamedThing.SHIPMENT, press),
                                    new LabelPartCommand(press))
                            .commands();

            assertThat(offered(commands, "FP-105", "label", "kit")).contains("FP-1052", "FP-1053");
            assertThat(offered(commands, "FP-105", "label", "kit", "FP-1052")).contains("FP-1053");
            assertThat(offered(commands, "N-169", "label", "job")).containsExactly("N-169");
            assertThat(offered(commands, "NC-0075", "label", "core")).containsExactly("NC-0075");
            assertThat(offered(commands, "SH-N0", "label", "shipment")).contains("SH-N07");
            assertThat(offered(commands, "HB-301", "label", "part")).contains("HB-3013");
        }
    }
}
