package counterbench.sheets.poi;

import counterbench.sheets.CsvFormat;
import counterbench.sheets.SheetFiles;
import java.util.List;

/** Sheets of every format that the program knows. */
public final class PoiSheets {
    private PoiSheets() {}

    /** Files that end in {@code .csv} and {@code .xlsx}. */
    public static SheetFiles files() {
        return new SheetFiles(List.of(new CsvFormat(), new XlsxFormat()));
    }
}
