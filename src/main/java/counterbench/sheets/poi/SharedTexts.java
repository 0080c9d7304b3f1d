package counterbench.sheets.poi;

import counterbench.sheets.SheetLimits;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** The texts that a workbook keeps once for all its cells, in few bytes. */
final class SharedTexts extends DefaultHandler {
    private static final int MOST_BYTES = 160_000_000;

    private final TextCollector text = new TextCollector();
    private byte[] bytes = new byte[1 << 16];
    private int[] ends = new int[1 << 10];
    private int count;

    /** The text of a number, from 0. */
    String get(int index) {
        if (index < 0 || index >= count) {
            throw new IllegalArgumentException("no shared text " + index);
        }
        int from = index == 0 ? 0 : ends[index - 1];
        return new String(bytes, from, ends[index] - from, StandardCharsets.UTF_8);
    }

    @Override
    public void startElement(String uri, String name, String prefixed, Attributes said) {
        if (name.equals("si")) {
            text.clear();
        }
        text.start(name);
    }

    @Override
    public void characters(char[] chars, int from, int length) {
        text.add(chars, from, length);
    }

    @Override
    public void endElement(String uri, String name, String prefixed) {
        text.end(name);
        if (name.equals("si")) {
            add(text.text().getBytes(StandardCharsets.UTF_8));
        }
    }

    private void add(byte[] added) {
        int from = count == 0 ? 0 : ends[count - 1];
        if (from + added.length > MOST_BYTES || count > 10 * SheetLimits.ROWS) {
            throw new TooMuch(
                    "holds more text than " + MOST_BYTES / 1_000_000 + " MB",
                    "split it into several files");
        }
        if (from + added.length > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(from + added.length, bytes.length * 3 / 2));
        }
        if (count == ends.length) {
            ends = Arrays.copyOf(ends, count * 3 / 2);
        }
        System.arraycopy(added, 0, bytes, from, added.length);
        ends[count++] = from + added.length;
    }
}
