package counterbench.shell.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.sheets.poi.WorkbookWriter;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CampaignProgressTest {
    @TempDir Path folder;

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void it_says_how_far_campaigns_are_and_writes_the_quarter(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn =
                    larkmere.shellOf(
                            Larkmere.QUINN,
                            new CampaignProgressCommand(larkmere::store),
                            new ExportCampaignCommand(
                                    larkmere::store, larkmere.sites(), new WorkbookWriter()));

            var progress = quinn.line("campaign progress TK-2605 --on 2026-03-31 --format csv");

            assertThat(progress.out().lines())
                    .containsExactly(
                            "campaign,involved,completed,not_needed,exported,stolen,scrapped,"
                                    + "unreachable,outstanding,declined,unlisted",
                            "TK-2605,40,24,7,0,0,1,1,7,1,0");
            assertThat(quinn.line("campaign progress TK-26O5").err()).contains("TK-2605");
            Path file = folder.resolve("q1.xlsx");
            var written = quinn.line("export campaign --quarter 2026-Q1 --to " + file);
            assertThat(written.status()).as(written.err()).isEqualTo(Status.DONE);
            assertThat(file).isNotEmptyFile();
            assertThat(quinn.line("export campaign --quarter 2026-Q5").status())
                    .isEqualTo(Status.USAGE);
            assertThat(quinn.line("export campaign --quarter 2027-Q1").err())
                    .contains("it has not begun");
        }
    }
}
