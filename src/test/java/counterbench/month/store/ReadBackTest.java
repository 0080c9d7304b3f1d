package counterbench.month.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterbench.db.TestStores;
import counterbench.month.Quarter;
import counterbench.month.sheet.BookKind;
import counterbench.month.sheet.SiteMonth;
import counterbench.month.store.ForeignReader.Seen;
import counterbench.shared.Progress;
import counterbench.sheets.poi.WorkbookWriter;
import counterbench.sheets.report.ReportLayouts;
import counterbench.shell.Larkmere;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The workbooks read back by fastexcel-reader, which parses the files by itself, cell by cell
 * beside the library that wrote them; formulas are worked out anew by the latter's evaluator.
 */
class ReadBackTest {
    @TempDir Path folder;

    @ParameterizedTest
    @EnumSource(BookKind.class)
    void two_libraries_that_share_nothing_read_the_same(BookKind kind) throws Exception {
        Path file = folder.resolve(kind.word() + ".xlsx");
        try (Larkmere larkmere = Larkmere.full(TestStores.H2)) {
            new ExportMonth(larkmere.store(), new WorkbookWriter())
                    .run(
                            new ExportMonth.Request(
                                    kind,
                                    new SiteMonth(Larkmere.NORTH, YearMonth.of(2026, 3)),
                                    ReportLayouts.programs(kind.word()),
                                    Larkmere.AS_OF,
                                    file),
                            Progress.SILENT);
        }
        Compared compared = compare(file);
        assertThat(compared.numbers()).isPositive();
        assertThat(compared.dates()).isPositive();
        assertThat(compared.formulas()).isPositive();
    }

    @Test
    void the_quarters_workbook_and_the_count_sheet_are_read_the_same() throws Exception {
        Path campaign = folder.resolve("campaign.xlsx");
        Path counts = folder.resolve("counts.xlsx");
        try (Larkmere larkmere = Larkmere.full(TestStores.H2)) {
            new ExportCampaign(larkmere.store(), new WorkbookWriter())
                    .run(
                            new ExportCampaign.Request(
                                    Quarter.of("2026-Q1").orElseThrow(),
                                    List.of("HB-0417", "TK-2605"),
                                    Larkmere.NORTH,
                                    ReportLayouts.programs("campaign"),
                                    Larkmere.AS_OF,
                                    campaign));
            new ExportCountSheet(larkmere.store(), new WorkbookWriter())
                    .run(
                            new ExportCountSheet.Request(
                                    Larkmere.NORTH,
                                    ReportLayouts.programs("count-sheet"),
                                    Larkmere.AS_OF,
                                    counts),
                            Progress.SILENT);
        }
        assertThat(compare(campaign).numbers()).isGreaterThan(100);
        assertThat(compare(counts).dates()).isPositive();
    }

    /** How many cells of each sort were compared. */
    record Compared(int numbers, int dates, int formulas) {}

    static Compared compare(Path file) throws Exception {
        Map<String, Seen> seen = ForeignReader.cells(file);
        assertThat(seen).hasSizeGreaterThan(50);
        int numbers = 0;
        int dates = 0;
        int formulas = 0;
        try (XSSFWorkbook book = new XSSFWorkbook(file.toFile())) {
            FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
            for (Sheet sheet : book) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        if (cell.getCellType() == CellType.BLANK) {
                            continue;
                        }
                        String at = sheet.getSheetName() + "!" + cell.getAddress();
                        Seen other = seen.remove(at);
                        assertThat(other).as(at).isNotNull();
                        switch (cell.getCellType()) {
                            case NUMERIC -> {
                                numbers++;
                                dates += DateUtil.isCellDateFormatted(cell) ? 1 : 0;
                                number(cell, other, at);
                            }
                            case FORMULA -> {
                                formulas++;
                                double stored = cell.getNumericCellValue();
                                assertThat(other.isFormula()).as(at).isTrue();
                                assertThat(Double.parseDouble(other.raw()))
                                        .as(at)
                                        .isEqualTo(stored);
                                assertThat(evaluator.evaluate(cell).getNumberValue())
                                        .as(at + " worked out anew")
                                        .isCloseTo(stored, within(1e-9));
                            }
                            default -> text(cell, other, at);
                        }
                    }
                }
            }
        }
        assertThat(seen).as("cells that only one library sees").isEmpty();
        return new Compared(numbers, dates, formulas);
    }

    private static void number(Cell cell, Seen other, String at) {
        assertThat(other.type()).as(at).isEqualTo(org.dhatim.fastexcel.reader.CellType.NUMBER);
        assertThat(other.isFormula()).as(at).isFalse();
        assertThat(Double.parseDouble(other.raw())).as(at).isEqualTo(cell.getNumericCellValue());
        if (DateUtil.isCellDateFormatted(cell)) {
            assertThat(other.format()).as(at + " is shown as a date").contains("yy");
        }
    }

    private static void text(Cell cell, Seen other, String at) {
        assertThat(other.type()).as(at).isEqualTo(org.dhatim.fastexcel.reader.CellType.STRING);
        assertThat(other.isFormula()).as(at + " was text").isFalse();
        assertThat(other.raw()).as(at).isEqualTo(cell.getStringCellValue());
    }
}
