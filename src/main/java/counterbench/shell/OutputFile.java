package counterbench.shell;

import counterbench.shared.Refused;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Supplier;

/**
 * A kind of file that commands write, and where it goes.
 *
 * @param what what people call it
 * @param ending what its names end in
 */
public record OutputFile(String what, String ending) {
    /** A workbook. */
    public static final OutputFile WORKBOOK = new OutputFile("workbook", ".xlsx");

    /** Pages for a printer. */
    public static final OutputFile PDF = new OutputFile("PDF file", ".pdf");

    /**
     * The file that is meant.
     *
     * @param said a file, or the folder that it goes to
     * @param usual its name in a folder
     * @throws Refused if it is there and must not be replaced, or cannot be one of this kind
     */
    public Path at(Path said, String usual, boolean replace) {
        Path place = said.toAbsolutePath().normalize();
        Path file = Files.isDirectory(place) ? place.resolve(usual) : place;
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith(ending)) {
            throw refused(file, "is no folder, and no name of a " + what, "end it in " + ending);
        }
        Path folder = file.getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw refused(file, "its folder is not there", "make the folder, or name another");
        }
        if (!Files.isWritable(folder)) {
            throw refused(file, "its folder cannot be written to", "name another with --to");
        }
        if (Files.isDirectory(file)) {
            throw refused(file, "is a folder", "name another with --to");
        }
        if (Files.exists(file) && !replace) {
            throw refused(file, "is there already", "name another with --to, or say --replace");
        }
        return file;
    }

    private static Refused refused(Path file, String because, String todo) {
        return new Refused("file \"" + file + "\"", because, todo);
    }

    /** Does the work, and refuses a disk or folder that does not take the file. */
    public static <T> T writing(Path file, Supplier<T> work) {
        try {
            return work.get();
        } catch (UncheckedIOException e) {
            throw refused(
                    file,
                    "cannot be written: " + reason(Objects.requireNonNull(e.getCause())),
                    "free some room, or name another with --to");
        }
    }

    private static String reason(IOException e) {
        return e instanceof FileSystemException f && f.getReason() != null
                ? f.getReason()
                : String.valueOf(e.getMessage());
    }
}
