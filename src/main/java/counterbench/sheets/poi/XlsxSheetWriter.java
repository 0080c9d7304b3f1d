package counterbench.sheets.poi;

import counterbench.sheets.Cell;
import counterbench.sheets.SheetWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jspecify.annotations.Nullable;

/** Writes cells into a workbook as they were read; formulas become their own text. */
final class XlsxSheetWriter implements SheetWriter {
    private static final int WINDOW = 100;

    private final Path file;
    private final SXSSFWorkbook workbook = new SXSSFWorkbook(WINDOW);
    private final CellStyle day = style("yyyy-mm-dd", false);
    private final CellStyle time = style("yyyy-mm-dd hh:mm:ss", false);
    private final CellStyle shaped = style("0.00######", false);
    private final CellStyle guarded = style("@", true);
    private @Nullable SXSSFSheet sheet;

    XlsxSheetWriter(Path file) {
        this.file = file;
    }

    private CellStyle style(String format, boolean quotePrefixed) {
        CellStyle style = workbook.createCellStyle();
        style.setDataFormat(workbook.createDataFormat().getFormat(format));
        style.setQuotePrefixed(quotePrefixed);
        return style;
    }

    @Override
    public void sheet(String name) {
        sheet = workbook.createSheet(name);
    }

    @Override
    public void row(int number, List<Cell> cells) {
        if (sheet == null) {
            throw new IllegalStateException("no sheet was begun");
        }
        Row row = sheet.createRow(number - 1);
        for (int i = 0; i < cells.size(); i++) {
            if (!cells.get(i).text().isEmpty()) {
                write(row.createCell(i), cells.get(i));
            }
        }
    }

    private void write(org.apache.poi.ss.usermodel.Cell to, Cell cell) {
        switch (cell.form()) {
            case NUMBER -> to.setCellValue(Double.parseDouble(cell.text()));
            case SHAPED_NUMBER -> {
                to.setCellValue(Double.parseDouble(cell.text()));
                to.setCellStyle(shaped);
            }
            case DATE -> writeDate(to, cell.text());
            case BOOLEAN -> to.setCellValue(cell.text().equals("TRUE"));
            default -> writeText(to, cell.text());
        }
    }

    private void writeDate(org.apache.poi.ss.usermodel.Cell to, String text) {
        if (text.contains("T")) {
            to.setCellValue(LocalDateTime.parse(text));
            to.setCellStyle(time);
        } else {
            to.setCellValue(LocalDate.parse(text));
            to.setCellStyle(day);
        }
    }

    private void writeText(org.apache.poi.ss.usermodel.Cell to, String text) {
        to.setCellValue(text);
        if ("=+-@".indexOf(text.charAt(0)) >= 0) {
            to.setCellStyle(guarded);
        }
    }

    @Override
    public void finish() {
        try (OutputStream out = Files.newOutputStream(file)) {
            workbook.write(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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
