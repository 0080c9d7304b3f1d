package counterbench.sheets.poi;

import counterbench.sheets.report.CellFormat;
import java.util.Currency;
import java.util.EnumMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;

/** How cells look: one quiet font, a filled row of headings, light lines, totals under a line. */
final class Styles {
    private static final String FONT = "Arial";

    /** The size of letters, in points. */
    static final short SIZE = 10;

    private static final short LARGE = 14;
    private static final XSSFColor INK = color(0x26, 0x32, 0x38);
    private static final XSSFColor HEADING_FILL = color(0xDD, 0xE6, 0xE4);
    private static final XSSFColor LINE = color(0xD4, 0xDA, 0xDC);

    private final StreamedWorkbook workbook;
    private final Currency currency;
    private final Map<CellFormat, CellStyle> body = new EnumMap<>(CellFormat.class);
    private final Map<CellFormat, CellStyle> totals = new EnumMap<>(CellFormat.class);
    private final Map<CellFormat, CellStyle> guarded = new EnumMap<>(CellFormat.class);
    private final Map<CellFormat, CellStyle> headings = new EnumMap<>(CellFormat.class);
    private final CellStyle title;
    private final CellStyle label;
    private final CellStyle plain;
    private final XSSFCellStyle plainNumber;
    private final XSSFCellStyle oneLineHeading;

    Styles(StreamedWorkbook workbook, Currency currency) {
        this.workbook = workbook;
        this.currency = currency;
        adjustUsualFont();
        for (CellFormat format : CellFormat.values()) {
            body.put(format, body(format, false));
            guarded.put(format, body(format, true));
            totals.put(format, total(format));
            headings.put(format, heading(format));
        }
        title = indented(styled(font(LARGE, true)));
        label = indented(styled(font(SIZE, true)));
        plain = indented(styled(font(SIZE, false)));
        plainNumber = styled(font(SIZE, false));
        show(plainNumber, CellFormat.INTEGER);
        oneLineHeading = heading(CellFormat.TEXT);
        oneLineHeading.setWrapText(false);
    }

    private static XSSFColor color(int red, int green, int blue) {
        return new XSSFColor(new byte[] {(byte) red, (byte) green, (byte) blue});
    }

    /** Columns are as many of this font's digits wide as they say. */
    private void adjustUsualFont() {
        XSSFFont usual = workbook.getXSSFWorkbook().getFontAt(0);
        usual.setFontName(FONT);
        usual.setFontHeightInPoints(SIZE);
    }

    /** A cell of a column. */
    CellStyle body(CellFormat format) {
        return style(body, format);
    }

    /** A cell of a column whose text a spreadsheet might take for a formula when it is edited. */
    CellStyle guarded(CellFormat format) {
        return style(guarded, format);
    }

    /** A cell of the row of totals. */
    CellStyle total(CellFormat format, boolean bare) {
        return style(totals, bare ? CellFormat.TEXT : format);
    }

    /** The heading of a column. */
    CellStyle headingOf(CellFormat format) {
        return style(headings, format);
    }

    private static CellStyle style(Map<CellFormat, CellStyle> styles, CellFormat format) {
        CellStyle style = styles.get(format);
        if (style == null) {
            throw new IllegalStateException("no style for " + format);
        }
        return style;
    }

    /** A title. */
    CellStyle title() {
        return title;
    }

    /** What a line of notes is about. */
    CellStyle label() {
        return label;
    }

    /** Text that stands in no table. */
    CellStyle plain() {
        return plain;
    }

    /** A number that stands in no table. */
    CellStyle plainNumber() {
        return plainNumber;
    }

    /** A heading that may go on in the next cell. */
    CellStyle oneLineHeading() {
        return oneLineHeading;
    }

    private XSSFFont font(short size, boolean bold) {
        XSSFFont font = (XSSFFont) workbook.createFont();
        font.setFontName(FONT);
        font.setFontHeightInPoints(size);
        font.setBold(bold);
        font.setColor(INK);
        return font;
    }

    private XSSFCellStyle styled(XSSFFont font) {
        XSSFCellStyle style = (XSSFCellStyle) workbook.createCellStyle();
        style.setFont(font);
        style.setVerticalAlignment(VerticalAlignment.CENTER);
        return style;
    }

    private static XSSFCellStyle indented(XSSFCellStyle style) {
        align(style, CellFormat.TEXT);
        return style;
    }

    private XSSFCellStyle body(CellFormat format, boolean quotePrefixed) {
        XSSFCellStyle style = styled(font(SIZE, false));
        show(style, format);
        style.setBorderBottom(BorderStyle.HAIR);
        style.setBottomBorderColor(LINE);
        style.setQuotePrefixed(quotePrefixed);
        return style;
    }

    private XSSFCellStyle total(CellFormat format) {
        XSSFCellStyle style = styled(font(SIZE, true));
        show(style, format);
        style.setBorderTop(BorderStyle.THIN);
        style.setTopBorderColor(INK);
        return style;
    }

    private XSSFCellStyle heading(CellFormat format) {
        XSSFCellStyle style = styled(font(SIZE, true));
        style.setFillForegroundColor(HEADING_FILL);
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        style.setBorderBottom(BorderStyle.THIN);
        style.setBottomBorderColor(INK);
        style.setWrapText(true);
        style.setVerticalAlignment(VerticalAlignment.BOTTOM);
        align(style, format);
        return style;
    }

    private void show(XSSFCellStyle style, CellFormat format) {
        style.setDataFormat(workbook.createDataFormat().getFormat(shown(format)));
        style.setWrapText(format == CellFormat.NOTE);
        align(style, format);
    }

    /** Numbers stand at the right, everything else at the left, a little away from the line. */
    private static void align(XSSFCellStyle style, CellFormat format) {
        boolean right = format.isNumber();
        style.setAlignment(right ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT);
        style.setIndention((short) 1);
    }

    private String shown(CellFormat format) {
        return switch (format) {
            case TEXT, NOTE -> "@";
            case DATE -> "yyyy-mm-dd";
            case TIME -> "yyyy-mm-dd hh:mm";
            case QUANTITY -> "General";
            case MONEY -> money();
            case INTEGER -> "#,##0";
            case PERCENT -> "0.0%";
        };
    }

    private String money() {
        int places = Math.max(0, currency.getDefaultFractionDigits());
        return places == 0 ? "#,##0" : "#,##0." + "0".repeat(places);
    }
}
