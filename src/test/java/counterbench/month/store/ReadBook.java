package counterbench.month.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;

/** A workbook that was written, read back: rows by heading, down to the totals or a gap. */
final class ReadBook implements AutoCloseable {
    private static final List<String> END = List.of("Total", "none");

    private final XSSFWorkbook workbook;

    ReadBook(Path file) {
        try {
            workbook = new XSSFWorkbook(file.toFile());
        } catch (IOException | InvalidFormatException e) {
            throw new IllegalStateException(e);
        }
    }

    List<String> sheets() {
        return StreamSupport.stream(workbook.spliterator(), false)
                .map(s -> s.getSheetName())
                .toList();
    }

    /** The rows of a sheet. */
    List<Map<String, String>> rows(String name) {
        XSSFSheet sheet = workbook.getSheet(name);
        List<String> headings = cells(sheet.getRow(0)).map(ReadBook::text).toList();
        List<Map<String, String>> rows = new ArrayList<>();
        for (int i = 1; i <= sheet.getLastRowNum(); i++) {
            @Nullable Row row = sheet.getRow(i);
            if (row == null || END.contains(text(row.getCell(0)))) {
                break;
            }
            rows.add(row(headings, row));
        }
        return rows;
    }

    private static Map<String, String> row(List<String> headings, Row row) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < headings.size(); i++) {
            cells.put(headings.get(i), text(row.getCell(i)));
        }
        return cells;
    }

    /** All texts of a sheet. */
    List<String> texts(String name) {
        return StreamSupport.stream(workbook.getSheet(name).spliterator(), false)
                .flatMap(ReadBook::cells)
                .map(ReadBook::text)
                .filter(text -> !text.isEmpty())
                .toList();
    }

    private static Stream<Cell> cells(Row row) {
        return StreamSupport.stream(row.spliterator(), false);
    }

    private static String text(@Nullable Cell cell) {
        if (cell == null || cell.getCellType() == CellType.BLANK) {
            return "";
        }
        if (cell.getCellType() != CellType.NUMERIC) {
            return cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : "?";
        }
        return DateUtil.isCellDateFormatted(cell)
                ? cell.getLocalDateTimeCellValue().toString()
                : number(BigDecimal.valueOf(cell.getNumericCellValue()));
    }

    private static String number(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    @Override
    public void close() {
        try {
            workbook.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
