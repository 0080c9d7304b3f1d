package counterbench.sheets.poi;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * Refuses XML that goes on for too long without the end of a tag: a parser keeps names and
 * attributes whole in memory, however long they are. The longest cell, with every character
 * escaped, is far shorter.
 */
final class TagGuard extends FilterInputStream {
    private static final int LONGEST = 1 << 20;

    private int sinceTag;

    TagGuard(InputStream in) {
        super(in);
    }

    @Override
    public int read() throws IOException {
        int read = in.read();
        if (read >= 0) {
            count((byte) read);
        }
        return read;
    }

    @Override
    public int read(byte[] bytes, int from, int length) throws IOException {
        int count = in.read(bytes, from, length);
        for (int i = from; i < from + count; i++) {
            count(bytes[i]);
        }
        return count;
    }

    private void count(byte read) {
        sinceTag = read == '>' ? 0 : sinceTag + 1;
        if (sinceTag > LONGEST) {
            throw new TooMuch("has a cell longer than any cell can be", "shorten the cell");
        }
    }
}
