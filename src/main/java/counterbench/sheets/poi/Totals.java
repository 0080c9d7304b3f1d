package counterbench.sheets.poi;

import counterbench.sheets.SheetLimits;
import counterbench.sheets.report.ColumnLayout;
import counterbench.sheets.report.SheetLayout;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.poi.ss.formula.SheetNameFormatter;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.jspecify.annotations.Nullable;

/**
 * Sums of columns, exact. They are written as formulas that follow the sheet's filter, with the
 * sums beside them for programs that do not compute.
 */
final class Totals {
    private final List<ColumnLayout> columns;
    private final Styles styles;
    private final List<BigDecimal> sums = new ArrayList<>();
    private final List<Page> pages = new ArrayList<>();

    /** Rows of a page, from its second row on. */
    private record Page(String name, int lastRow) {}

    Totals(SheetLayout layout, Styles styles) {
        this.columns = layout.columns();
        this.styles = styles;
        columns.forEach(c -> sums.add(BigDecimal.ZERO));
    }

    void add(int column, @Nullable Object value) {
        if (value != null && columns.get(column).total()) {
            BigDecimal number = CellWriter.number(value);
            if (number.stripTrailingZeros().precision() <= SheetLimits.DIGITS) {
                sums.set(column, sums.get(column).add(number));
            }
        }
    }

    void endPage(String name, int lastRow) {
        pages.add(new Page(name, lastRow + 1));
    }

    void write(SXSSFRow row) {
        for (int i = 0; i < columns.size(); i++) {
            Cell cell = row.createCell(i);
            boolean total = columns.get(i).total();
            cell.setCellStyle(styles.total(columns.get(i).format(), !total));
            if (total) {
                cell.setCellFormula(formula(CellReference.convertNumToColString(i)));
                cell.setCellValue(sums.get(i).doubleValue());
            } else if (i == 0) {
                cell.setCellValue("Total");
            }
        }
    }

    private String formula(String column) {
        String here = pages.get(pages.size() - 1).name();
        return pages.stream()
                .map(p -> sum(p, column, !p.name().equals(here)))
                .collect(Collectors.joining("+"));
    }

    private static String sum(Page page, String column, boolean elsewhere) {
        String sheet = elsewhere ? SheetNameFormatter.format(page.name()) + "!" : "";
        return "SUBTOTAL(9," + sheet + column + "2:" + column + page.lastRow() + ")";
    }
}
