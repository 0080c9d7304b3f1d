package counterbench.month.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;

/** Reads a workbook by a library that shares nothing with the one that wrote it. */
final class ForeignReader {
    private ForeignReader() {}

    /**
     * A cell as that library sees it.
     *
     * @param format the number format that it is shown in, if it has one
     */
    record Seen(CellType type, String raw, String formula, String format) {
        boolean isFormula() {
            return !formula.isEmpty();
        }
    }

    /** Every cell that is not empty, by sheet and address. */
    static Map<String, Seen> cells(Path file) {
        Map<String, Seen> cells = new LinkedHashMap<>();
        try (ReadableWorkbook book =
                new ReadableWorkbook(file.toFile(), new ReadingOptions(true, false))) {
            for (Sheet sheet : book.getSheets().toList()) {
                try (Stream<Row> rows = sheet.openStream()) {
                    rows.forEach(row -> add(sheet.getName(), row, cells));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return cells;
    }

    private static void add(String sheet, Row row, Map<String, Seen> cells) {
        List<Cell> all = row.stream().filter(c -> c != null).toList();
        for (Cell cell : all) {
            if (cell.getType() != CellType.EMPTY) {
                cells.put(
                        sheet + "!" + cell.getAddress(),
                        new Seen(
                                cell.getType(),
                                String.valueOf(cell.getRawValue()),
                                cell.getFormula() == null ? "" : cell.getFormula(),
                                cell.getDataFormatString() == null
                                        ? ""
                                        : cell.getDataFormatString()));
            }
        }
    }
}
