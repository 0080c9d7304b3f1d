package counterbench.shell.intake;

import counterbench.shared.Refused;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Where the marked copy of a refused import goes: a folder that holds nothing yet. */
final class MarkedFolder {
    private MarkedFolder() {}

    /** A folder beside the paper, such as {@code march-refused}, that is not there yet. */
    static Path beside(Path paper) {
        Path absolute = paper.toAbsolutePath().normalize();
        Path fileName = absolute.getFileName();
        String name = fileName == null ? "paper" : fileName.toString();
        String plain = name.replaceFirst("(?i)\\.(csv|xlsx)$", "") + "-refused";
        Path folder = absolute.resolveSibling(plain);
        for (int n = 2; Files.exists(folder); n++) {
            folder = absolute.resolveSibling(plain + "-" + n);
        }
        return folder;
    }

    /**
     * A folder that a person named.
     *
     * @throws Refused if it is a file, or holds something
     */
    static Path named(Path folder) {
        if (Files.exists(folder) && !isEmptyFolder(folder)) {
            throw new Refused(
                    "a marked copy in \"" + folder + "\"",
                    "it is there and is no empty folder",
                    "name a new folder");
        }
        return folder;
    }

    private static boolean isEmptyFolder(Path folder) {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.findAny().isEmpty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
