package counterbench.month.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterbench.db.TestStores;
import counterbench.month.sheet.BookKind;
import counterbench.month.sheet.SiteMonth;
import counterbench.month.store.ForeignReader.Seen;
import counterbench.shared.Progress;
import counterbench.sheets.poi.WorkbookWriter;
import counterbench.sheets.report.ReportLayouts;
import counterbench.shell.Larkmere;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
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
        compare(file);
    }

    static void compare(Path file) throws Exception {
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
        assertThat(numbers).isPositive();
        assertThat(dates).isPositive();
        assertThat(formulas).isPositive();
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
