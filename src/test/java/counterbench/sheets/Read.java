package counterbench.sheets;

import counterbench.facts.FactRow;
import counterbench.shared.Refused;
import counterbench.sheets.poi.PoiSheets;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Reads small sheets whole, for tests. Local times are those of Chicago. */
public final class Read {
    public static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    private Read() {}

    /** Writes a file and reads all its sheets. */
    public static List<ParsedRow> csv(Path folder, String name, String content) {
        return rows(file(folder, name, content));
    }

    public static Path file(Path folder, String name, String content) {
        return file(folder, name, content.getBytes(StandardCharsets.UTF_8));
    }

    public static Path file(Path folder, String name, byte[] content) {
        try {
            return Files.write(folder.resolve(name), content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static List<ParsedRow> rows(Path file) {
        SheetFiles files = PoiSheets.files();
        List<ParsedRow> rows = new ArrayList<>();
        for (Sheet sheet : files.find(file)) {
            files.read(
                    sheet,
                    Set.of("transmission", "engine", "Cab"),
                    site -> "EAST".equals(site) ? ZoneId.of("America/New_York") : CHICAGO,
                    rows::add);
        }
        return rows;
    }

    /** The facts of a file that is expected to have no problem. */
    public static List<FactRow> facts(Path file) {
        return rows(file).stream()
                .map(r -> Objects.requireNonNull(r.fact(), () -> r.problems().toString()))
                .toList();
    }

    /** Every problem of a file, in the words that people see. */
    public static List<String> problems(Path file) {
        return rows(file).stream()
                .flatMap(r -> r.problems().stream())
                .map(p -> p.problem().message())
                .toList();
    }

    /** The messages with which a file is refused as a whole. */
    public static List<String> refusal(Path file) {
        try {
            rows(file);
        } catch (Refused e) {
            return e.problems().stream().map(p -> p.message()).toList();
        }
        throw new AssertionError(file + " was not refused");
    }
}
