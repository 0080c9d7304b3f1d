package counterbench.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * Decodes UTF-8 and puts a mark where bytes are not UTF-8, so that the reader of rows can name the
 * row. The mark is a lone surrogate, which no valid UTF-8 can produce.
 */
final class Utf8Reader extends Reader {
    static final char MALFORMED = '\udfff';

    private final InputStream in;
    private final ByteBuffer bytes = ByteBuffer.allocate(1 << 16).flip();
    private final CharsetDecoder decoder =
            StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT);
    private final CharBuffer chars = CharBuffer.allocate(1 << 16).flip();
    private boolean ended;
    private long quotationMarks;

    Utf8Reader(InputStream in) {
        this.in = in;
    }

    /** How many quotation marks have been read. */
    long quotationMarks() {
        return quotationMarks;
    }

    @Override
    public int read(char[] target, int from, int length) throws IOException {
        while (!chars.hasRemaining() && (!ended || bytes.hasRemaining())) {
            decode();
        }
        int count = Math.min(length, chars.remaining());
        chars.get(target, from, count);
        return count == 0 && length > 0 ? -1 : count;
    }

    private void decode() throws IOException {
        chars.clear();
        CoderResult result = decoder.decode(bytes, chars, ended);
        if (result.isError()) {
            bytes.position(bytes.position() + result.length());
            chars.put(MALFORMED);
        } else if (result.isUnderflow() && !ended) {
            fill();
        }
        chars.flip();
        quotationMarks += chars.chars().filter(c -> c == '"').count();
    }

    private void fill() throws IOException {
        bytes.compact();
        int count = in.read(bytes.array(), bytes.position(), bytes.remaining());
        ended = count < 0;
        bytes.position(bytes.position() + Math.max(0, count)).flip();
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
