package counterbench.spool;

import java.io.BufferedInputStream;
import java.io.Closeable;
import java.io.DataInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Stands on one row of a sorted run, and goes on to the next when told. */
abstract sealed class SpoolReader implements Closeable {
    private SpooledRow row;

    private SpoolReader(SpooledRow first) {
        this.row = first;
    }

    /** A run in a file, which has at least one row. */
    static SpoolReader of(Path file) throws IOException {
        DataInputStream in =
                new DataInputStream(new BufferedInputStream(Files.newInputStream(file)));
        @Nullable SpooledRow first = OfFile.read(in);
        if (first == null) {
            throw new IOException(file + " is empty");
        }
        return new OfFile(first, in);
    }

    /** A run in memory, which has at least one row. */
    static SpoolReader of(Iterator<SpooledRow> rows) {
        return new Held(rows.next(), rows);
    }

    SpooledRow row() {
        return row;
    }

    /** Goes to the next row, if there is one. */
    boolean advance() throws IOException {
        @Nullable SpooledRow next = next();
        if (next == null) {
            return false;
        }
        row = next;
        return true;
    }

    abstract @Nullable SpooledRow next() throws IOException;

    private static final class Held extends SpoolReader {
        private final Iterator<SpooledRow> rows;

        Held(SpooledRow first, Iterator<SpooledRow> rows) {
            super(first);
            this.rows = rows;
        }

        @Override
        @Nullable SpooledRow next() {
            return rows.hasNext() ? rows.next() : null;
        }

        @Override
        public void close() {}
    }

    private static final class OfFile extends SpoolReader {
        private final DataInputStream in;

        OfFile(SpooledRow first, DataInputStream in) {
            super(first);
            this.in = in;
        }

        @Override
        @Nullable SpooledRow next() throws IOException {
            return read(in);
        }

        static @Nullable SpooledRow read(DataInputStream in) throws IOException {
            if (!in.readBoolean()) {
                return null;
            }
            String key = text(in);
            long number = in.readLong();
            Map<String, Object> values = new LinkedHashMap<>();
            for (int cells = in.readInt(); cells > 0; cells--) {
                String field = text(in);
                values.put(field, value((char) in.readByte(), text(in)));
            }
            return new SpooledRow(key, number, values);
        }

        private static Object value(char type, String text) {
            return switch (type) {
                case 'n' -> new BigDecimal(text);
                case 'w' -> Long.valueOf(text);
                case 'd' -> LocalDate.parse(text);
                case 'i' -> Instant.parse(text);
                default -> text;
            };
        }

        private static String text(DataInputStream in) throws IOException {
            return new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8);
        }

        @Override
        public void close() throws IOException {
            in.close();
        }
    }
}
