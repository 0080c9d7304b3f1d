package counterbench.spool;

import counterbench.shared.Quantity;
import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.DataOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Writes rows to a temporary file: each value with a letter for its type. */
final class SpoolWriter implements Closeable {
    private final DataOutputStream out;

    SpoolWriter(Path file) throws IOException {
        out = new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(file)));
    }

    void write(SpooledRow row) {
        try {
            out.writeBoolean(true);
            text(row.key());
            out.writeLong(row.number());
            out.writeInt((int) row.values().values().stream().filter(v -> v != null).count());
            for (Map.Entry<String, ? extends @Nullable Object> cell : row.values().entrySet()) {
                if (cell.getValue() != null) {
                    text(cell.getKey());
                    value(cell.getValue());
                }
            }
        } catch (IOException e) {
            throw TemporaryFiles.unusable(e);
        }
    }

    private void value(Object value) throws IOException {
        out.writeByte(type(value));
        text(value instanceof BigDecimal number ? number.toPlainString() : value.toString());
    }

    private static char type(Object value) {
        if (value instanceof Quantity || value instanceof BigDecimal) {
            return 'n';
        }
        if (value instanceof Long || value instanceof Integer) {
            return 'w';
        }
        if (value instanceof LocalDate) {
            return 'd';
        }
        return value instanceof Instant ? 'i' : 't';
    }

    /** Texts may be longer than what the stream's own way of writing them allows. */
    private void text(String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    @Override
    public void close() throws IOException {
        out.writeBoolean(false);
        out.close();
    }
}
