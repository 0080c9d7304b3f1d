package counterbench.sheets;

import counterbench.facts.FactKind;
import counterbench.shared.Visible;
import java.nio.file.Path;
import java.util.Objects;

/**
 * One sheet of rows of one kind.
 *
 * @param file the file that it stands in
 * @param name the sheet's name in its workbook; empty for a {@code .csv}, which is one sheet
 * @param kind what its rows are
 */
public record Sheet(Path file, String name, FactKind kind) {
    public Sheet {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(kind, "kind");
    }

    /** The only sheet of a {@code .csv} file, whatever the file is called. */
    public static Sheet csv(Path file, FactKind kind) {
        return new Sheet(file, "", kind);
    }

    /** Whether the sheet is a {@code .csv} file, where a row has exactly the cells it writes. */
    public boolean isCsv() {
        return name.isEmpty();
    }

    /** How people are told of it: {@code march.xlsx, sheet uses}. */
    public String shown() {
        String fileName = Visible.text(String.valueOf(file.getFileName()));
        return isCsv() ? fileName : fileName + ", sheet " + Visible.text(name);
    }
}
