package counterbench.sheets;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Tells by a file's first bytes what it is, and refuses what is not UTF-8 text by name. */
final class Encodings {
    private static final byte[] UTF8_MARK = {(byte) 0xef, (byte) 0xbb, (byte) 0xbf};

    private Encodings() {}

    /** The bytes of a text in UTF-8, after the byte order mark if there is one. */
    static InputStream utf8(Path file) throws IOException {
        InputStream in = new BufferedInputStream(Files.newInputStream(file), 1 << 16);
        try {
            in.mark(8);
            byte[] head = in.readNBytes(4);
            in.reset();
            refuseOthers(file, head);
            if (starts(head, UTF8_MARK)) {
                in.skipNBytes(UTF8_MARK.length);
            }
            return in;
        } catch (IOException | RuntimeException e) {
            in.close();
            throw e;
        }
    }

    private static void refuseOthers(Path file, byte[] head) {
        if (starts(head, 'P', 'K', 3, 4)) {
            throw SheetFiles.refused(
                    file, "is a workbook and not a CSV file", "give its name the ending .xlsx");
        }
        if (starts(head, 0xd0, 0xcf, 0x11, 0xe0)) {
            throw SheetFiles.refused(
                    file, "is a workbook of an old format", "save it as .xlsx or as CSV in UTF-8");
        }
        if (isUtf16(head)) {
            throw SheetFiles.refused(
                    file, "is written in UTF-16 or UTF-32", "save it as CSV in UTF-8");
        }
    }

    private static boolean isUtf16(byte[] head) {
        return starts(head, 0xff, 0xfe)
                || starts(head, 0xfe, 0xff)
                || starts(head, 0, 0)
                || (head.length == 4 && head[0] != 0 && head[1] == 0 && head[3] == 0)
                || (head.length == 4 && head[0] == 0 && head[1] != 0 && head[2] == 0);
    }

    private static boolean starts(byte[] head, int... start) {
        byte[] bytes = new byte[start.length];
        for (int i = 0; i < start.length; i++) {
            bytes[i] = (byte) start[i];
        }
        return starts(head, bytes);
    }

    private static boolean starts(byte[] head, byte[] start) {
        return head.length >= start.length
                && Arrays.equals(head, 0, start.length, start, 0, start.length);
    }
}
