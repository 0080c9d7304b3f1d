package counterbench.shared.packed;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** A CSV table from the project's top-level {@code shared/}, packed with the program. */
public final class PackedTable {
    private static final String FOLDER = "/counterbench/shared/";

    private PackedTable() {}

    /**
     * The rows of a table, each as heading to cell, in the order of the file.
     *
     * @throws IllegalStateException if the program was packed without the table
     */
    public static List<Map<String, String>> rows(String fileName) {
        try (InputStream bytes = PackedTable.class.getResourceAsStream(FOLDER + fileName)) {
            if (bytes == null) {
                throw new IllegalStateException("the program was packed without " + fileName);
            }
            return rows(new InputStreamReader(bytes, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Map<String, String>> rows(InputStreamReader text) throws IOException {
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(text)) {
            return rows.stream()
                    .map(NamedCsvRecord::getFieldsAsMap)
                    .collect(Collectors.toUnmodifiableList());
        }
    }

    /** The cell under a heading that the table must have. */
    public static String cell(Map<String, String> row, String heading) {
        return Objects.requireNonNull(row.get(heading), heading);
    }
}
