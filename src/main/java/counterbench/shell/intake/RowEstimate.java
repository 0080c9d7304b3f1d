package counterbench.shell.intake;

import counterbench.sheets.Sheet;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;

/**
 * About how many rows sheets hold, judged by their size, so that progress can say how far it is.
 */
final class RowEstimate {
    private static final int SAMPLE_BYTES = 65_536;
    private static final long UNKNOWN = 0;

    private RowEstimate() {}

    /** Rows of all sheets together; 0 where that cannot be told, as for packed workbooks. */
    static long of(Collection<Sheet> sheets) {
        return sheets.stream().allMatch(Sheet::isCsv)
                ? sheets.stream().mapToLong(sheet -> rows(sheet.file())).sum()
                : UNKNOWN;
    }

    private static long rows(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] sample = in.readNBytes(SAMPLE_BYTES);
            long lines = lineEnds(sample);
            return sample.length < SAMPLE_BYTES ? lines : lines * Files.size(file) / sample.length;
        } catch (IOException e) {
            return UNKNOWN;
        }
    }

    private static long lineEnds(byte[] sample) {
        long lines = 0;
        for (byte b : sample) {
            lines += b == '\n' ? 1 : 0;
        }
        return lines;
    }
}
