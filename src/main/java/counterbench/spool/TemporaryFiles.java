package counterbench.spool;

import counterbench.shared.StoreUnusable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files that only their owner can read, in the system's folder for such. */
public final class TemporaryFiles {
    private TemporaryFiles() {}

    /**
     * A new, empty one.
     *
     * @throws StoreUnusable if there is no room, or no such folder
     */
    public static Path create(String ending) {
        try {
            return Files.createTempFile("counterbench-", ending);
        } catch (IOException e) {
            throw unusable(e);
        }
    }

    /** What a person is told where one cannot be written or read. */
    public static StoreUnusable unusable(Exception e) {
        return new StoreUnusable(
                "the folder for temporary files, "
                        + System.getProperty("java.io.tmpdir")
                        + ", cannot be used ("
                        + e.getMessage()
                        + "); make room there, or name another one:"
                        + " JAVA_TOOL_OPTIONS=-Djava.io.tmpdir=FOLDER",
                e);
    }

    /** Removes one; if it cannot, whoever tidies up that folder finds it. */
    public static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // It holds nothing that anybody needs.
        }
    }
}
