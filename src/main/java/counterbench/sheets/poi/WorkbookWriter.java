package counterbench.sheets.poi;

import counterbench.home.WholeFile;
import counterbench.sheets.SheetLimits;
import counterbench.sheets.report.Report;
import counterbench.sheets.report.SheetLayout;
import counterbench.sheets.report.WorkbookSink;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;

/**
 * Writes reports as workbooks. Rows go to a temporary file as they come, so memory does not grow
 * with them. A sheet that is full goes on in a second one, {@code Findings (2)}.
 */
public final class WorkbookWriter implements WorkbookSink {
    private static final String PROGRAM = "Counterbench";

    private final int mostRows;

    public WorkbookWriter() {
        this(SheetLimits.ROWS);
    }

    /** A writer whose sheets have fewer rows, headings and totals among them. */
    WorkbookWriter(int mostRows) {
        this.mostRows = mostRows;
    }

    @Override
    public void write(Report report, Path file) {
        refuseUnknown(report);
        try (StreamedWorkbook workbook = new StreamedWorkbook()) {
            describe(workbook, report);
            fill(workbook, report);
            WholeFile.write(file, workbook::write);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void refuseUnknown(Report report) {
        for (String sheet : report.rows().keySet()) {
            if (report.layout().sheet(sheet).isEmpty()
                    && !report.layout().leftOut().contains(sheet)) {
                throw new IllegalArgumentException("the report has no sheet " + sheet);
            }
        }
    }

    private void fill(StreamedWorkbook workbook, Report report) {
        Styles styles = new Styles(workbook, report.currency());
        List<ChartData> charts = report.layout().charts().stream().map(ChartData::new).toList();
        List<NotesSheet.Written> written = new ArrayList<>();
        for (SheetLayout layout : report.layout().sheets()) {
            ReportSheet sheet = new ReportSheet(workbook, styles, report, layout, mostRows);
            written.add(new NotesSheet.Written(layout, sheet.write(charts)));
        }
        new NotesSheet(workbook, styles, report).write(written, charts);
    }

    private static void describe(StreamedWorkbook workbook, Report report) {
        POIXMLProperties said = workbook.getXSSFWorkbook().getProperties();
        said.getCoreProperties().setTitle(report.layout().title() + " - " + report.subject());
        said.getCoreProperties().setSubjectProperty(report.subject());
        said.getCoreProperties().setCreator(PROGRAM);
        said.getCoreProperties().setCreated(Optional.of(Date.from(report.madeAt())));
        said.getExtendedProperties().setApplication(PROGRAM);
    }
}
