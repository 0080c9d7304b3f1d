package counterbench.sheets.poi;

import counterbench.sheets.SheetLimits;
import counterbench.sheets.report.CellFormat;
import counterbench.sheets.report.ColumnLayout;
import counterbench.sheets.report.SheetLayout;
import counterbench.sheets.report.SheetLayout.Apart;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.poi.ss.formula.SheetNameFormatter;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.jspecify.annotations.Nullable;

/**
 * Sums of columns, exact. They are written as formulas that follow the sheet's filter, with the
 * sums beside them for programs that do not compute. Below them stands what of them comes from rows
 * that must be known apart, filter or not.
 */
final class Totals {
    private final List<ColumnLayout> columns;
    private final @Nullable Apart apart;
    private final int tells;
    private final Styles styles;
    private final List<BigDecimal> sums;
    private final List<BigDecimal> sumsApart;
    private final List<Page> pages = new ArrayList<>();
    private boolean anyApart;

    /** Rows of a page, from its second row on. */
    private record Page(String name, int lastRow) {}

    Totals(SheetLayout layout, Styles styles) {
        this.columns = layout.columns();
        this.apart = layout.apart();
        this.tells = apart == null ? -1 : layout.indexOf(apart.field());
        this.styles = styles;
        this.sums = zeros();
        this.sumsApart = zeros();
    }

    private List<BigDecimal> zeros() {
        return new ArrayList<>(Collections.nCopies(columns.size(), BigDecimal.ZERO));
    }

    /** Adds a row. */
    void add(Map<String, ? extends @Nullable Object> row) {
        boolean isApart = apart != null && apart.are().contains(said(row, apart.field()));
        anyApart |= isApart;
        for (int i = 0; i < columns.size(); i++) {
            Object value = columns.get(i).total() ? row.get(columns.get(i).field()) : null;
            if (value != null) {
                add(i, CellWriter.number(value), isApart);
            }
        }
    }

    private static String said(Map<String, ? extends @Nullable Object> row, String field) {
        return String.valueOf(row.get(field));
    }

    private void add(int column, BigDecimal number, boolean isApart) {
        if (number.stripTrailingZeros().precision() <= SheetLimits.DIGITS) {
            sums.set(column, sums.get(column).add(number));
            if (isApart) {
                sumsApart.set(column, sumsApart.get(column).add(number));
            }
        }
    }

    void endPage(String name, int lastRow) {
        pages.add(new Page(name, lastRow + 1));
    }

    /** How many rows it may take. */
    int mostRows() {
        return apart == null ? 1 : 2;
    }

    /** Whether there was a row that must be known apart. */
    boolean isAnyApart() {
        return anyApart;
    }

    void write(SXSSFRow row) {
        for (int i = 0; i < columns.size(); i++) {
            Cell cell = row.createCell(i);
            boolean total = columns.get(i).total();
            cell.setCellStyle(styles.total(columns.get(i).format(), !total));
            if (total) {
                String column = CellReference.convertNumToColString(i);
                cell.setCellFormula(formula(page -> "SUBTOTAL(9," + cells(page, column) + ")"));
                cell.setCellValue(sums.get(i).doubleValue());
            } else if (i == 0) {
                cell.setCellValue("Total");
            }
        }
    }

    /**
     * The line below the totals, where there is any row that must be known apart.
     *
     * @param firstWidth of the first column, in characters
     */
    void writeApart(SXSSFRow row, int firstWidth) {
        int lines = apart == null ? 1 : Widths.lines(apart.heading(), firstWidth);
        row.setHeightInPoints(ReportSheet.height(lines));
        for (int i = 0; apart != null && i < columns.size(); i++) {
            boolean total = columns.get(i).total();
            Cell cell = row.createCell(i);
            cell.setCellStyle(styles.body(total ? columns.get(i).format() : CellFormat.NOTE));
            if (total) {
                if (tells >= 0) {
                    cell.setCellFormula(
                            formulaApart(CellReference.convertNumToColString(i), apart));
                }
                cell.setCellValue(sumsApart.get(i).doubleValue());
            } else if (i == 0) {
                cell.setCellValue(apart.heading());
            }
        }
    }

    private String formulaApart(String column, Apart rows) {
        String telling = CellReference.convertNumToColString(tells);
        return rows.are().stream()
                .map(
                        word ->
                                formula(
                                        page ->
                                                "SUMIF(%s,\"%s\",%s)"
                                                        .formatted(
                                                                cells(page, telling),
                                                                word.replace("\"", "\"\""),
                                                                cells(page, column))))
                .collect(Collectors.joining("+"));
    }

    /** Makes room for the sums. */
    void measure(Widths widths) {
        IntStream.range(0, columns.size())
                .filter(i -> columns.get(i).total())
                .forEach(i -> widths.measure(i, sums.get(i)));
    }

    private String formula(Function<Page, String> sumOfPage) {
        return pages.stream().map(sumOfPage).collect(Collectors.joining("+"));
    }

    private String cells(Page page, String column) {
        boolean here = page.name().equals(pages.get(pages.size() - 1).name());
        String sheet = here ? "" : SheetNameFormatter.format(page.name()) + "!";
        return sheet + column + "2:" + column + page.lastRow();
    }
}
