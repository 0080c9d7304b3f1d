package counterbench.oracle;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * Writes rows as they come into one or several files a kind, shuffled within a buffer if wanted.
 */
final class SheetFiles implements AutoCloseable {

    private static final int BUFFER = 20_000;
    private static final Map<String, String> HEADINGS = headings();

    private final Path folder;
    private final int filesPerKind;
    private final boolean shuffled;
    private final Random random;
    private final Map<String, Sheet> sheets = new LinkedHashMap<>();

    private record Sheet(List<String> headings, List<List<String>> buffer, List<Writer> files) {}

    SheetFiles(Path folder, int filesPerKind, boolean shuffled, long seed) {
        this.folder = folder;
        this.filesPerKind = filesPerKind;
        this.shuffled = shuffled;
        this.random = new Random(seed);
    }

    /** Writes one row: heading, cell, heading, cell …; empty cells may be left out. */
    void row(String kind, String... said) {
        Sheet sheet = sheets.computeIfAbsent(kind, this::open);
        String[] cells = new String[sheet.headings().size()];
        java.util.Arrays.fill(cells, "");
        for (int i = 0; i < said.length; i += 2) {
            int column = sheet.headings().indexOf(said[i]);
            if (column < 0) {
                throw new IllegalArgumentException(kind + " has no heading " + said[i]);
            }
            cells[column] = said[i + 1];
        }
        sheet.buffer().add(List.of(cells));
        if (sheet.buffer().size() >= BUFFER) {
            flush(sheet);
        }
    }

    /**
     * Names the headings of a sheet that has other ones, such as a vehicle list with attributes.
     */
    void headings(String kind, String headings) {
        sheets.put(kind, open(kind, headings));
    }

    @Override
    public void close() {
        for (Sheet sheet : sheets.values()) {
            flush(sheet);
            sheet.files().forEach(SheetFiles::close);
        }
    }

    private Sheet open(String kind) {
        return open(kind, HEADINGS.get(kind));
    }

    private Sheet open(String kind, String headings) {
        List<String> names = List.of(headings.split(" ", -1));
        List<Writer> files = new ArrayList<>();
        for (int i = 0; i < filesPerKind; i++) {
            String name = filesPerKind == 1 ? kind + ".csv" : kind + "-" + (i + 1) + ".csv";
            files.add(open(folder.resolve(name)));
            write(files.get(i), heading(kind, names, i));
        }
        return new Sheet(names, new ArrayList<>(), files);
    }

    /** Equal rows go into one file, so that both count. */
    private void flush(Sheet sheet) {
        if (shuffled) {
            Collections.shuffle(sheet.buffer(), random);
        }
        for (List<String> cells : sheet.buffer()) {
            int file = Math.floorMod((cells.hashCode() * 31) >> 3, sheet.files().size());
            write(sheet.files().get(file), Csv.line(inOrder(cells, file)));
        }
        sheet.buffer().clear();
    }

    /** Headings stand in any order, and in any letter case but for attributes of vehicles. */
    private static String heading(String kind, List<String> names, int file) {
        String line = Csv.line(inOrder(names, file));
        return file % 2 == 0 || kind.startsWith("vehicles")
                ? line
                : line.toUpperCase(Locale.ROOT).replace("X-", "x-");
    }

    private static List<String> inOrder(List<String> cells, int file) {
        List<String> ordered = new ArrayList<>(cells);
        if (file % 2 == 1) {
            Collections.reverse(ordered);
        }
        return ordered;
    }

    private static Writer open(Path file) {
        try {
            return Files.newBufferedWriter(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Writer writer, String text) {
        try {
            writer.write(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void close(Writer writer) {
        try {
            writer.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, String> headings() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("people", "name roles");
        all.put("parts", "part name unit");
        all.put("instruments", "instrument kind unit serial");
        all.put(
                "calibrations",
                "instrument calibrated_on due_on certificate uncertainty_percent uncertainty");
        all.put("rates", "rate amount currency valid_from");
        all.put("contacts", "campaign vin at outcome reason by ref");
        all.put("orders", "order part quantity ordered_on expected_on cancelled_on by");
        all.put(
                "kits",
                "kit kit_part received_at revision expires_on lot unit_cost currency missing"
                        + " document by");
        all.put(
                "receipts",
                "part quantity received_at lot expires_on unit_cost currency document by ref");
        all.put("moves", "event at kit part quantity lot other_site document reason by ref");
        all.put(
                "jobs",
                "job campaign vin opened_at work_order technician completed_at outcome redo_of"
                        + " mileage x-story");
        all.put("issues", "job at kit part quantity lot by ref");
        all.put(
                "uses",
                "job part quantity condition at kit lot core was by reason ref site x-note");
        all.put("marks", "job step at value unit fastener minutes instrument by ref");
        all.put(
                "cores",
                "core event at job serial part quantity packaging shipment reason by ref"
                        + " other_site");
        all.put("shipments", "shipment carrier tracking weight weight_unit by");
        all.put("acknowledgements", "shipment at event core serial reason by ref");
        all.put("counts", "counted_at quantity part kit by ref");
        all.put(
                "claims",
                "claim job submitted_on labour_hours labour_amount parts_amount core_charge"
                        + " currency withdrawn_on denied_on reason replaces by");
        all.put("credits", "remittance line amount paid_on claim vin core serial currency kind");
        return all;
    }
}
