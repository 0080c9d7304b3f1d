package counterbench.home;

import counterbench.shared.StoreUnusable;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** The one folder in which everything of the program lies. It is made when first needed. */
public final class Home {
    /** Names the folder; without it the home is {@code .counterbench} in the user's home. */
    public static final String VARIABLE = "COUNTERBENCH_HOME";

    private final Path folder;

    public Home(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    /**
     * The home folder that the surroundings name. Nothing is made yet.
     *
     * @throws StoreUnusable if the variable does not name a folder
     */
    public static Home of(Surroundings surroundings) {
        String named = surroundings.variable(VARIABLE).orElse("");
        try {
            return new Home(
                    named.isEmpty()
                            ? surroundings.userHome().resolve(".counterbench")
                            : Path.of(named));
        } catch (InvalidPathException e) {
            throw new StoreUnusable(VARIABLE + " \"" + named + "\" is not the name of a folder", e);
        }
    }

    /** Where it lies, whether it is there yet or not. */
    public Path location() {
        return folder;
    }

    /**
     * The folder, made so that only its owner can look into it if it was not there.
     *
     * @throws StoreUnusable if it cannot be made
     */
    public Path folder() {
        try {
            return Files.isDirectory(folder)
                    ? folder
                    : Files.createDirectories(folder, OwnerOnly.folder());
        } catch (IOException e) {
            throw unusable(e);
        }
    }

    /**
     * A folder in it, made so that only its owner can look into it if it was not there.
     *
     * @throws StoreUnusable if it cannot be made
     */
    public Path folder(String name) {
        return new Home(folder().resolve(name)).folder();
    }

    /**
     * A file in the folder, made empty and readable by its owner only if it was not there.
     *
     * @throws StoreUnusable if it cannot be made
     */
    public Path file(String name) {
        Path file = folder().resolve(name);
        try {
            return Files.exists(file) ? file : Files.createFile(file, OwnerOnly.file());
        } catch (FileAlreadyExistsException e) {
            return file;
        } catch (IOException e) {
            throw unusable(e);
        }
    }

    private StoreUnusable unusable(IOException e) {
        return new StoreUnusable(
                "home folder \""
                        + folder
                        + "\" cannot be used: "
                        + e
                        + "; free the path, or name another folder in "
                        + VARIABLE,
                e);
    }
}
