package counterbench.shell;

import java.nio.file.Path;
import java.util.function.Supplier;

/** The workbook that a command writes: where the person wants it, and the writing. */
public final class WorkbookFile {
    /** Where it goes. */
    public static final Option<Path> TO =
            Option.of(
                    "to",
                    "FILE",
                    Readings.PATH,
                    "the workbook or its folder; exports in the home folder unless said");

    /** Whether a file of that name may be lost. */
    public static final Option<Boolean> REPLACE =
            Option.flag("replace", "write over a file of that name");

    private WorkbookFile() {}

    /**
     * The file that is meant.
     *
     * @param usual its name in a folder
     */
    public static Path of(Invocation in, String usual) {
        Path said = in.find(TO).orElseGet(() -> in.home().folder("exports"));
        return OutputFile.WORKBOOK.at(said, usual, in.has(REPLACE));
    }

    /** Does the work that writes it, then says where it is. */
    public static <T> T write(Invocation in, Path file, Supplier<T> work) {
        T written = OutputFile.writing(file, work);
        in.print(file.toString());
        return written;
    }
}
