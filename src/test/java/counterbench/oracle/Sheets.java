package counterbench.oracle;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** All rows of a folder by kind; the kind is the file's name up to the first dot or hyphen. */
final class Sheets {

    private final Map<String, List<Row>> byKind = new TreeMap<>();
    private final String site;
    private int line;

    private Sheets(String site) {
        this.site = site;
    }

    static Sheets read(Path folder, String site) {
        Sheets sheets = new Sheets(site);
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(f -> f.toString().endsWith(".csv"))
                    .sorted()
                    .forEach(f -> sheets.add(kind(f), read(f)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return sheets;
    }

    static Sheets of(String site) {
        return new Sheets(site);
    }

    /** Adds one sheet's text; rows that name another site are not ours. */
    void add(String kind, String text) {
        List<List<String>> rows = Csv.parse(text);
        List<String> headings =
                rows.get(0).stream().map(h -> h.strip().toLowerCase(Locale.ROOT)).toList();
        List<Row> kept = byKind.computeIfAbsent(kind, k -> new ArrayList<>());
        for (List<String> cells : rows.subList(1, rows.size())) {
            Row row = row(headings, cells);
            if (!row.has("site") || row.text("site").equals(site)) {
                kept.add(row);
            }
        }
    }

    /** Adds one row as it would be read. */
    void add(String kind, Map<String, String> cells) {
        byKind.computeIfAbsent(kind, k -> new ArrayList<>())
                .add(new Row(Map.copyOf(cells), line++));
    }

    List<Row> rows(String kind) {
        return byKind.getOrDefault(kind, List.of());
    }

    private Row row(List<String> headings, List<String> cells) {
        Map<String, String> said = new LinkedHashMap<>();
        for (int i = 0; i < headings.size() && i < cells.size(); i++) {
            String cell = cells.get(i).strip();
            if (!cell.isEmpty() && !headings.get(i).startsWith("x-")) {
                said.put(headings.get(i), cell);
            }
        }
        return new Row(said, line++);
    }

    private static String kind(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return name.replaceFirst("[.-].*", "");
    }

    private static String read(Path file) {
        try {
            String text = Files.readString(file, StandardCharsets.UTF_8);
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
