package counterbench.sheets;

import java.nio.file.Path;
import java.util.List;

/** One format of files with rows. Everything is refused by {@link counterbench.shared.Refused}. */
public interface SheetFormat {
    /** How the names of such files end, in lower case, with the dot. */
    String ending();

    /** The sheets of a file, in their order. */
    List<Sheet> sheets(Path file);

    /**
     * About how many rows a sheet has, judged by its size and how it begins; 0 where that cannot be
     * told.
     */
    long aboutRows(Sheet sheet);

    /** Reads a sheet from its first row to its last, without keeping any. */
    void read(Sheet sheet, RowSink rows);

    /** A file of this format to be written row by row. */
    SheetWriter write(Path file);
}
