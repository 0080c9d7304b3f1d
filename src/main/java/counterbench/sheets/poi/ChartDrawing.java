package counterbench.sheets.poi;

import counterbench.sheets.report.ChartLayout;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.util.Units;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Draws a chart over cells of a streamed sheet. The values are stored in the chart, too, because
 * the cells have left memory; each series has a fill of its own, without which some programs draw
 * nothing.
 */
final class ChartDrawing {
    private static final int WIDE = 70;
    private static final BigDecimal FEW = BigDecimal.TEN;
    private static final BigDecimal MANY = BigDecimal.valueOf(100);
    private static final int NARROWEST_COLUMN = 9;
    private static final byte[][] PALETTE = {
        {0x2F, 0x6B, 0x75},
        {(byte) 0xC9, (byte) 0x8B, 0x3A},
        {0x7C, (byte) 0x8F, 0x4E},
        {(byte) 0x94, 0x53, 0x4B}
    };

    private static final int LEFT = 120_000;

    /** Keeps the frame off the edges of its rows, which may be those of a printed page. */
    private static final int INSET = 3 * Units.EMU_PER_POINT;

    private static final int LAST_ROW = Units.toEMU(ReportSheet.ROW_HEIGHT);

    private final StreamedWorkbook workbook;
    private final ChartLayout layout;
    private final List<ChartData.Point> points;
    private final List<String> titles;

    ChartDrawing(
            StreamedWorkbook workbook,
            ChartLayout layout,
            List<ChartData.Point> points,
            List<String> titles) {
        this.workbook = workbook;
        this.layout = layout;
        this.points = points;
        this.titles = titles;
    }

    /**
     * @param first the first row of the block: a title, a row of headings, then the points
     * @param rows how many rows the chart is high
     */
    void draw(String sheetName, int first, int rows, int[] widths) {
        XSSFSheet sheet = workbook.getXSSFWorkbook().getSheet(sheetName);
        int from = titles.size() + 1;
        XSSFClientAnchor anchor =
                new XSSFClientAnchor(
                        LEFT,
                        INSET,
                        0,
                        LAST_ROW - INSET,
                        from,
                        top(first, from, widths),
                        end(from, widths),
                        first + rows - 1);
        XSSFChart chart = sheet.createDrawingPatriarch().createChart(anchor);
        setTitle(chart);
        XDDFChartData data = data(chart);
        addSeries(sheetName, first, data);
        chart.plot(data);
        if (titles.size() > 1) {
            chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        }
    }

    private void setTitle(XSSFChart chart) {
        chart.setTitleText(layout.title());
        chart.setTitleOverlay(false);
        chart.getFormattedTitle().getParagraph(0).getTextRuns().forEach(r -> r.setFontSize(11.0));
    }

    /**
     * A block's title that is wider than its table stands above the chart, not across its frame.
     */
    private int top(int first, int from, int[] widths) {
        int table = Arrays.stream(widths).limit(from).sum();
        return Widths.fitsInBold(layout.title(), table) ? first : first + 1;
    }

    /** The column at which the chart is wide enough. */
    private static int end(int from, int[] widths) {
        int column = from;
        for (int width = 0; width < WIDE; column++) {
            width += column < widths.length ? widths[column] : NARROWEST_COLUMN;
        }
        return column;
    }

    private XDDFChartData data(XSSFChart chart) {
        boolean lying = layout.type() == ChartLayout.Type.BAR;
        XDDFCategoryAxis categories =
                chart.createCategoryAxis(lying ? AxisPosition.LEFT : AxisPosition.BOTTOM);
        XDDFValueAxis values =
                chart.createValueAxis(lying ? AxisPosition.BOTTOM : AxisPosition.LEFT);
        values.setCrosses(lying ? AxisCrosses.MAX : AxisCrosses.AUTO_ZERO);
        values.setMinimum(least());
        if (isMany()) {
            values.setNumberFormat("#,##0");
        }
        if (isFewThings()) {
            values.setMajorUnit(1);
        }
        values.getOrAddMajorGridProperties().setLineProperties(line((byte) 0xD9, 0.5));
        if (layout.type() == ChartLayout.Type.LINE) {
            return chart.createData(ChartTypes.LINE, categories, values);
        }
        return bars(chart, categories, values, lying);
    }

    /** Whether only small whole numbers are shown, between which no line must stand. */
    private boolean isFewThings() {
        return points.stream()
                .flatMap(p -> p.values().stream())
                .allMatch(v -> v.remainder(BigDecimal.ONE).signum() == 0 && v.compareTo(FEW) <= 0);
    }

    /** Whether there are so many that their fractions say nothing beside the axis. */
    private boolean isMany() {
        return points.stream()
                .flatMap(p -> p.values().stream())
                .anyMatch(v -> v.abs().compareTo(MANY) >= 0);
    }

    /** Where values begin: at zero, unless some are below. */
    private double least() {
        return points.stream()
                .flatMap(p -> p.values().stream())
                .mapToDouble(Number::doubleValue)
                .reduce(0, Math::min);
    }

    private static XDDFChartData bars(
            XSSFChart chart, XDDFCategoryAxis categories, XDDFValueAxis values, boolean lying) {
        XDDFBarChartData bars =
                (XDDFBarChartData) chart.createData(ChartTypes.BAR, categories, values);
        bars.setBarDirection(lying ? BarDirection.BAR : BarDirection.COL);
        bars.setGapWidth(60);
        if (lying) {
            categories.setOrientation(AxisOrientation.MAX_MIN);
        }
        return bars;
    }

    private void addSeries(String sheet, int first, XDDFChartData data) {
        data.setVaryColors(false);
        XDDFDataSource<String> categories =
                XDDFDataSourcesFactory.fromArray(
                        points.stream().map(ChartData.Point::category).toArray(String[]::new),
                        range(sheet, first, 0));
        for (int i = 0; i < titles.size(); i++) {
            XDDFChartData.Series series =
                    data.addSeries(categories, values(i, range(sheet, first, i + 1)));
            series.setTitle(titles.get(i), new CellReference(sheet, first + 1, i + 1, true, true));
            paint(series, PALETTE[i % PALETTE.length]);
        }
    }

    private XDDFNumericalDataSource<Double> values(int series, String range) {
        Double[] values =
                points.stream()
                        .map(p -> p.values().get(series).doubleValue())
                        .toArray(Double[]::new);
        return XDDFDataSourcesFactory.fromArray(values, range);
    }

    private String range(String sheet, int first, int column) {
        return new CellRangeAddress(first + 2, first + 1 + points.size(), column, column)
                .formatAsString(sheet, true);
    }

    private static void paint(XDDFChartData.Series series, byte[] rgb) {
        XDDFSolidFillProperties fill = new XDDFSolidFillProperties(XDDFColor.from(rgb));
        if (series instanceof XDDFLineChartData.Series line) {
            XDDFLineProperties stroke = new XDDFLineProperties(fill);
            stroke.setWidth(2.0);
            line.setLineProperties(stroke);
            line.setSmooth(false);
        } else {
            series.setFillProperties(fill);
        }
    }

    private static XDDFLineProperties line(byte grey, double width) {
        XDDFLineProperties line =
                new XDDFLineProperties(
                        new XDDFSolidFillProperties(XDDFColor.from(new byte[] {grey, grey, grey})));
        line.setWidth(width);
        return line;
    }
}
