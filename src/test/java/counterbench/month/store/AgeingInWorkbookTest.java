package counterbench.month.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.claims.Ageing;
import counterbench.db.TestStores;
import counterbench.month.sheet.BookKind;
import counterbench.month.sheet.SiteMonth;
import counterbench.shared.Progress;
import counterbench.sheets.poi.WorkbookWriter;
import counterbench.sheets.report.ReportLayouts;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import counterbench.shell.claims.ClaimAgeingCommand;
import counterbench.shell.intake.ImportCommand;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds what the warranty workbook says is open, by age, against the ageing of the desk. */
class AgeingInWorkbookTest {
    @TempDir Path folder;

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_is_paid_too_much_is_taken_off_nothing_in_the_workbook_either(TestStores stores)
            throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn =
                    larkmere.shellOf(
                            Larkmere.QUINN,
                            new ImportCommand(larkmere::store, larkmere.sites()),
                            new ClaimAgeingCommand(larkmere::store, larkmere.sites()));
            Path credits =
                    Files.writeString(
                            folder.resolve("credits.csv"),
                            "remittance,line,amount,paid_on,claim\nRM-O,1,5000.00,2026-04-09,CN-060\n");
            assertThat(quinn.line("import " + credits).status()).isEqualTo(Status.DONE);

            List<Map<String, String>> claims = claims(larkmere);

            assertThat(quinn.line("claim ageing").messages())
                    .contains("still to be paid, in USD: " + byAge(claims))
                    .contains(
                            "paid too much, in USD: "
                                    + sum(claims, "Paid too much")
                                    + " for 1 claim");
            assertThat(claims)
                    .filteredOn(row -> "CN-060".equals(row.get("Claim")))
                    .singleElement()
                    .satisfies(
                            row ->
                                    assertThat(row)
                                            .containsEntry("Open", "")
                                            .containsEntry("Age", Ageing.UP_TO_30.words()));
        }
    }

    private static String byAge(List<Map<String, String>> claims) {
        return Arrays.stream(Ageing.values())
                .map(age -> age.words() + " " + sum(ofAge(claims, age), "Open"))
                .collect(Collectors.joining(", "));
    }

    private static List<Map<String, String>> ofAge(List<Map<String, String>> claims, Ageing age) {
        return claims.stream().filter(row -> age.words().equals(row.get("Age"))).toList();
    }

    private static String sum(List<Map<String, String>> claims, String heading) {
        return claims.stream()
                .map(row -> Objects.requireNonNull(row.get(heading), heading))
                .filter(cell -> !cell.isEmpty())
                .map(BigDecimal::new)
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .setScale(2)
                .toPlainString();
    }

    private List<Map<String, String>> claims(Larkmere larkmere) {
        Path file = folder.resolve("warranty.xlsx");
        new ExportMonth(larkmere.store(), new WorkbookWriter())
                .run(
                        new ExportMonth.Request(
                                BookKind.WARRANTY,
                                new SiteMonth(Larkmere.NORTH, YearMonth.of(2026, 4)),
                                ReportLayouts.programs("warranty"),
                                Larkmere.AS_OF,
                                file),
                        Progress.SILENT);
        try (ReadBook book = new ReadBook(file)) {
            return book.rows("Claims");
        }
    }
}
