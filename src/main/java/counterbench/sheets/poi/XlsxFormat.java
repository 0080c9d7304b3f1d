package counterbench.sheets.poi;

import counterbench.facts.FactKind;
import counterbench.sheets.RowSink;
import counterbench.sheets.Sheet;
import counterbench.sheets.SheetFiles;
import counterbench.sheets.SheetFormat;
import counterbench.sheets.SheetWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Workbooks of Office Open XML. The kind is the sheet's name. */
public final class XlsxFormat implements SheetFormat {
    @Override
    public String ending() {
        return ".xlsx";
    }

    @Override
    public List<Sheet> sheets(Path file) {
        try (OpenWorkbook workbook = OpenWorkbook.open(file)) {
            List<Sheet> sheets = new ArrayList<>();
            for (String name : workbook.sheetNames()) {
                FactKind kind = SheetFiles.kind(file, "the sheet's name", name.strip());
                sheets.add(new Sheet(file, name, kind));
            }
            return List.copyOf(sheets);
        }
    }

    @Override
    public long aboutRows(Sheet sheet) {
        try (OpenWorkbook workbook = OpenWorkbook.open(sheet.file())) {
            return workbook.aboutRows(sheet);
        }
    }

    @Override
    public void read(Sheet sheet, RowSink rows) {
        try (OpenWorkbook workbook = OpenWorkbook.open(sheet.file())) {
            workbook.read(sheet, rows);
        }
    }

    @Override
    public SheetWriter write(Path file) {
        return new XlsxSheetWriter(file);
    }
}
