package counterbench.shell.campaign;

import counterbench.shared.Refused;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/** Finds the pack files that a person means. */
final class PackFiles {
    private PackFiles() {}

    /**
     * A file.
     *
     * @param name how problems call it
     */
    record PackFile(Path path, String name) {}

    /**
     * The files themselves, and the packs in folders by name. One that stands alone goes by its own
     * name, several by their paths as named.
     *
     * @throws Refused if a folder holds none
     */
    static List<PackFile> of(Collection<Path> filesAndFolders) {
        List<Path> files = filesAndFolders.stream().flatMap(named -> at(named).stream()).toList();
        return files.stream()
                .map(
                        file ->
                                new PackFile(
                                        file,
                                        String.valueOf(
                                                files.size() == 1 ? file.getFileName() : file)))
                .toList();
    }

    private static List<Path> at(Path fileOrFolder) {
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
