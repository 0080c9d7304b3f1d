package counterbench.db;

import counterbench.home.OwnerOnly;
import counterbench.shared.StoreUnusable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import org.jooq.SQLDialect;
import org.jspecify.annotations.Nullable;

/**
 * Where the store lies.
 *
 * @param file the embedded store's file without its ending; empty for a server
 */
public record StoreAddress(
        String url, String user, String password, SQLDialect dialect, Optional<Path> file) {
    private static final String KEY_FILE = "store.key";

    /**
     * The server that the property names, or else the embedded store in the home folder.
     *
     * @param server the value of COUNTERBENCH_STORE, such as {@code
     *     jdbc:postgresql://host/base?user=…}
     */
    public static StoreAddress of(Path home, @Nullable String server) {
        if (server == null || server.isBlank()) {
            return embedded(home);
        }
        if (!server.startsWith("jdbc:postgresql:")) {
            throw new StoreUnusable(
                    "COUNTERBENCH_STORE is \""
                            + server
                            + "\": only a PostgreSQL address is understood; write"
                            + " jdbc:postgresql://host/base?user=name&password=secret or leave it empty");
        }
        return new StoreAddress(server, "", "", SQLDialect.POSTGRES, Optional.empty());
    }

    /**
     * The embedded store. {@link SteadyFiles} keep a Ctrl-C from closing the file for everybody,
     * WRITE_DELAY=0 keeps acknowledged commits when the process dies, AUTO_SERVER lets several
     * shells share it.
     *
     * <p>RETENTION_TIME, a week: with the usual 45 seconds a killed process was seen to lose an
     * acknowledged entry, and with 0 each time. What leads to the newest commit is probably written
     * over; DEVELOPERS.md has what was measured.
     */
    private static StoreAddress embedded(Path home) {
        Path file = home.resolve("store");
        String url =
                "jdbc:h2:"
                        + SteadyFiles.SCHEME
                        + ":"
                        + file.toAbsolutePath()
                        + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH"
                        + ";WRITE_DELAY=0;RETENTION_TIME=604800000"
                        + ";AUTO_SERVER=TRUE;LOCK_TIMEOUT=30000;CACHE_SIZE=65536";
        return new StoreAddress(url, "counterbench", key(home), SQLDialect.H2, Optional.of(file));
    }

    /** The embedded store's password: random, in a file that only its owner can read. */
    private static String key(Path home) {
        Path file = home.resolve(KEY_FILE);
        try {
            Files.createDirectories(home);
            if (!Files.exists(file)) {
                writeKey(home, file);
            }
            return Files.readString(file).strip();
        } catch (IOException e) {
            throw new StoreUnusable(
                    "home folder \"" + home + "\" cannot be used: " + e.getMessage(), e);
        }
    }

    private static void writeKey(Path home, Path file) throws IOException {
        byte[] bytes = new byte[24];
        new SecureRandom().nextBytes(bytes);
        Path draft = Files.createTempFile(home, KEY_FILE, null, OwnerOnly.file());
        Files.writeString(draft, HexFormat.of().formatHex(bytes));
        try {
            // A link does not overwrite: of two shells starting at once one key wins, for both.
            Files.createLink(file, draft);
        } catch (java.nio.file.FileAlreadyExistsException e) {
            // The other shell was first, and its key is the one to read.
        } finally {
            Files.delete(draft);
        }
    }
}
