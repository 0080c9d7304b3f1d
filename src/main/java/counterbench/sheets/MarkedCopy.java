package counterbench.sheets;

import counterbench.shared.Refused;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Copies sheets and says beside every refused row why it was refused, in a last column {@code
 * refused_because}. A copy can be put right and imported as it is: that column is passed over.
 */
public final class MarkedCopy {
    private final SheetFiles files;

    public MarkedCopy(SheetFiles files) {
        this.files = files;
    }

    /**
     * Writes a copy of every file that the sheets stand in, under its own name.
     *
     * @param why why a row was refused; null for a row that was not
     * @param folder where the copies go, which is not where the files are
     * @return the copies, in the order of the files
     */
    public List<Path> write(
            List<Sheet> sheets, Function<RowPosition, @Nullable String> why, Path folder) {
        Map<Path, List<Sheet>> byFile = new LinkedHashMap<>();
        sheets.forEach(s -> byFile.computeIfAbsent(s.file(), f -> new ArrayList<>()).add(s));
        List<Path> copies = new ArrayList<>();
        byFile.forEach((file, own) -> copies.add(copy(file, own, why, folder)));
        return List.copyOf(copies);
    }

    private Path copy(
            Path file,
            List<Sheet> sheets,
            Function<RowPosition, @Nullable String> why,
            Path folder) {
        Path copy = folder.resolve(file.getFileName());
        if (Files.exists(copy)) {
            throw new Refused(
                    "a marked copy to " + copy,
                    "the file is there already",
                    "name an empty folder");
        }
        try (SheetWriter writer = files.format(file).write(copy)) {
            for (Sheet sheet : sheets) {
                writer.sheet(sheet.name());
                files.read(sheet, new Marking(writer, why));
            }
            writer.finish();
        }
        return copy;
    }

    /** Copies the rows of one sheet. */
    private static final class Marking implements RowSink {
        private final SheetWriter writer;
        private final Function<RowPosition, @Nullable String> why;
        private int column;
        private boolean markedBefore;

        Marking(SheetWriter writer, Function<RowPosition, @Nullable String> why) {
            this.writer = writer;
            this.why = why;
        }

        @Override
        public void headings(SheetRow row) {
            column = said(row.cells());
            for (int i = 0; i < row.cells().size(); i++) {
                if (Text.trimmed(row.cell(i).text()).equalsIgnoreCase(Headings.REASON)) {
                    column = i;
                    markedBefore = true;
                }
            }
            write(row, Headings.REASON);
        }

        @Override
        public void row(SheetRow row) {
            String reason = why.apply(row.at());
            write(row, reason == null ? "" : CsvGuard.guarded(reason));
        }

        private void write(SheetRow row, String reason) {
            List<Cell> cells = new ArrayList<>(row.cells());
            boolean over = markedBefore && said(cells) == column + 1;
            int place = over ? column : Math.max(column, said(cells));
            cells.addAll(Collections.nCopies(Math.max(0, place + 1 - cells.size()), Cell.EMPTY));
            cells.set(place, Cell.text(reason));
            writer.row(row.at().row(), cells);
        }

        private static int said(List<Cell> cells) {
            int said = cells.size();
            while (said > 0 && cells.get(said - 1).isBlank()) {
                said--;
            }
            return said;
        }
    }
}
