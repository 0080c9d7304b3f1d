package counterbench.shell.campaign;

import counterbench.shared.Refused;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Finds the pack files that a person means. */
final class PackFiles {
    private PackFiles() {}

    /**
     * The file itself, or the packs in the folder by name.
     *
     * @throws Refused if the folder holds none
     */
    static List<Path> at(Path fileOrFolder) {
        if (!Files.isDirectory(fileOrFolder)) {
            return List.of(fileOrFolder);
        }
        List<Path> found = inFolder(fileOrFolder);
        if (found.isEmpty()) {
            throw new Refused(
                    "packs in \"" + fileOrFolder + "\"",
                    "the folder holds none",
                    "packs end in .yaml or .yml");
        }
        return found;
    }

    private static List<Path> inFolder(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(PackFiles::isPack).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isPack(Path file) {
        String name = String.valueOf(file.getFileName());
        return Files.isRegularFile(file)
                && !name.startsWith(".")
                && (name.endsWith(".yaml") || name.endsWith(".yml"));
    }
}
