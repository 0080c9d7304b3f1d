package counterbench.shell.rack;

import static counterbench.shell.rack.RackShells.done;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.judgement.Rule;
import counterbench.review.store.ReviewSite;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The return centre's sheet comes in as it is, and is set against what left. */
class AcknowledgementSheetTest {
    private static final String HEADING = "shipment,at,event,core,serial,reason\n";

    @TempDir Path folder;

    private String sheet(String name, String rows) throws IOException {
        return "import " + Files.writeString(folder.resolve(name), HEADING + rows);
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void every_kind_of_difference_is_shown_and_none_is_settled_by_guessing(TestStores stores)
            throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = RackShells.maren(larkmere);
            done(
                    maren,
                    sheet(
                            "acknowledgements-a.csv",
                            """
                            SH-N13,2026-04-09 09:00,accepted,NC-0O70,,
                            SH-N13,2026-04-09 09:00,rejected,NC-0071,7P000000,cracked
                            SH-N99,2026-04-09 09:00,accepted,NC-5555,,
                            """));
            assertThat(done(maren, "shipment show SH-N13").screen())
                    .contains(
                            "on their sheet and not on ours: core NC-0O70; is it NC-0070? (the tag"
                                    + " is a slip of the hand away)",
                            "core NC-0071 bears another serial with them: 7P000000 where ours is"
                                    + " 9V795661, not alike")
                    .containsPattern("NC-0070 .* received ");
            assertThat(strays(larkmere)).containsExactly("SH-N07", "SH-N13", "SH-N99");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_core_that_they_name_under_another_shipment_is_told_with_what_puts_it_right(
            TestStores stores) throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = RackShells.maren(larkmere);
            done(
                    maren,
                    sheet(
                            "acknowledgements-b.csv",
                            "SH-N77,2026-03-12 09:00,rejected,NC-0038,,\"cracked \"\"again\"\"\"\n"));
            String screen = done(maren, "shipment show SH-N07").screen();
            assertThat(screen)
                    .containsPattern("NC-0038 .* rejected ")
                    .contains(
                            "core NC-0038 is named under shipment SH-N77, which it was never on:"
                                    + " rejected on 2026-03-12, which counts for it; to put it right:"
                                    + " reverse 9.1 --reason TEXT, then acknowledge SH-N07 rejected"
                                    + " NC-0038 --at \"2026-03-12 09:00\" --reason \"cracked \\\"again\\\"\"\n")
                    .doesNotContain("on our sheet and not on theirs: core NC-0038");
            done(maren, "reverse 9.1 --reason \"the shipment was misread\"");
            done(
                    maren,
                    "acknowledge SH-N07 rejected NC-0038 --at \"2026-03-12 09:00\" --reason"
                            + " \"cracked \\\"again\\\"\"");
            assertThat(done(maren, "shipment show SH-N07").screen())
                    .containsPattern("NC-0038 .* rejected ")
                    .doesNotContain("SH-N77");
        }
    }

    /** Shipments of which they name something that was not on it; one of them never was. */
    private static List<String> strays(Larkmere larkmere) {
        return new ReviewSite(larkmere.store())
                .run(Larkmere.NORTH, Larkmere.AS_OF, ReviewSite.NEWEST, jobs -> {}).stream()
                        .filter(f -> f.rule() == Rule.ACKNOWLEDGEMENT_STRAY)
                        .map(f -> f.subject().name())
                        .sorted()
                        .toList();
    }
}
