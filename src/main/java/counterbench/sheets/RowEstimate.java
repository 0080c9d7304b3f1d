package counterbench.sheets;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.io.InputStream;

/** About how many rows there are in a text, by how often its beginning has what ends a row. */
public final class RowEstimate {
    /** Where it cannot be told. */
    public static final long UNKNOWN = 0;

    private static final int SAMPLE_BYTES = 65_536;

    private RowEstimate() {}

    /**
     * About how many rows.
     *
     * @param size the length of the whole text, in bytes
     * @param mark what every row has once
     */
    public static long of(InputStream text, long size, String mark) throws IOException {
        byte[] sample = text.readNBytes(SAMPLE_BYTES);
        long rows = new String(sample, ISO_8859_1).split(mark, -1).length - 1L;
        return sample.length < SAMPLE_BYTES ? rows : rows * size / sample.length;
    }
}
