package counterbench.sheets.poi;

import java.io.OutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/**
 * A workbook whose rows leave memory as they are written. It is packed at a level from which on
 * files hardly become smaller and take much longer.
 */
final class StreamedWorkbook extends SXSSFWorkbook {
    static final int ROWS_IN_MEMORY = 100;
    private static final int PACKED = 3;

    StreamedWorkbook() {
        super(ROWS_IN_MEMORY);
    }

    @Override
    protected ZipArchiveOutputStream createArchiveOutputStream(OutputStream out) {
        ZipArchiveOutputStream zip = super.createArchiveOutputStream(out);
        zip.setLevel(PACKED);
        return zip;
    }
}
