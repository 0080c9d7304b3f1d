package counterbench.sheets.report;

import java.nio.file.Path;

/** Writes a report as a workbook. */
@FunctionalInterface
public interface WorkbookSink {
    /**
     * Writes the workbook, over an older one of that name if there is one. The file is complete or
     * not there.
     */
    void write(Report report, Path file);
}
