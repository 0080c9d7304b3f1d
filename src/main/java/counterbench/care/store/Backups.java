package counterbench.care.store;

import counterbench.care.Manifest;
import counterbench.db.Migrations;
import counterbench.db.Store;
import counterbench.home.OwnerOnly;
import counterbench.shared.Progress;
import counterbench.shared.Refused;
import counterbench.shared.StoreUnusable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The backups beside the store. A backup appears under its name only when it is whole and on the
 * disk, and only its owner can read it: it holds the hashes of PINs.
 */
public final class Backups {
    private static final String BEGUN = ".begun";
    private static final String ENDING = ".zip";
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss-SSS", Locale.ROOT)
                    .withZone(ZoneOffset.UTC);

    private final Path folder;

    /**
     * @param folder where backups lie; made when first needed
     */
    public Backups(Path folder) {
        this.folder = folder;
    }

    /**
     * A backup that was written.
     *
     * @param rows how many rows it holds
     * @param version the version of the store's tables
     */
    public record Written(Path file, long rows, String version) {}

    /** Writes a backup under a name that tells its time and version. */
    public Written write(Store store, Instant now, Progress progress) {
        String version = Migrations.versionOf(store).orElse("");
        makeFolder();
        Path file = folder.resolve("store-" + STAMP.format(now) + "Z-v" + version + ENDING);
        return write(store, file, now, progress);
    }

    /**
     * Writes a backup to a file of that name.
     *
     * @throws Refused if there is such a file already, or it cannot be written
     */
    public Written write(Store store, Path file, Instant now, Progress progress) {
        refuseUnlessFree(file);
        Path begun = begin(file);
        try {
            Manifest manifest = write(store, begun, file, now, progress);
            return new Written(file, manifest.rows(), manifest.version());
        } catch (IOException | UncheckedIOException e) {
            throw cannotWrite(file, e);
        } finally {
            delete(begun);
        }
    }

    private static void refuseUnlessFree(Path file) {
        if (Files.exists(file)) {
            throw new Refused(
                    "backup to \"" + file + "\"",
                    "there is such a file already",
                    "choose another name, or move that file away");
        }
    }

    private static Path begin(Path file) {
        try {
            Path beside = file.toAbsolutePath().resolveSibling("");
            return Files.createTempFile(
                    beside, String.valueOf(file.getFileName()), BEGUN, OwnerOnly.file());
        } catch (IOException e) {
            throw cannotWrite(file, e);
        }
    }

    private static Refused cannotWrite(Path file, Exception e) {
        return new Refused(
                "backup to \"" + file + "\"",
                "it cannot be written (" + e.getMessage() + ")",
                "make room there, or name a file that you may write");
    }

    private static Manifest write(
            Store store, Path begun, Path file, Instant now, Progress progress) throws IOException {
        Manifest manifest;
        try (FileChannel channel = FileChannel.open(begun, StandardOpenOption.WRITE);
                OutputStream out = Channels.newOutputStream(channel)) {
            manifest = new WriteBackup(store, progress).to(out, now);
            channel.force(true);
        }
        Files.move(begun, file, StandardCopyOption.ATOMIC_MOVE);
        sync(file.toAbsolutePath().resolveSibling(""));
        return manifest;
    }

    /** Brings the new name of a file to the disk, where the system can do that. */
    private static void sync(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Some systems open no folders; they keep names on the disk by themselves.
        }
    }

    private static void delete(Path begun) {
        try {
            Files.deleteIfExists(begun);
        } catch (IOException e) {
            // It stays behind, and check-home tells of it.
        }
    }

    private void makeFolder() {
        try {
            Files.createDirectories(folder, OwnerOnly.folder());
        } catch (IOException e) {
            throw new StoreUnusable(
                    "the folder of backups \"" + folder + "\" cannot be made: " + e.getMessage(),
                    e);
        }
    }

    /** The backups there are, oldest first. */
    public List<Path> all() {
        return filesEndingWith(ENDING);
    }

    /** Backups that were begun and never finished. */
    public List<Path> begun() {
        return filesEndingWith(BEGUN);
    }

    private List<Path> filesEndingWith(String ending) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> String.valueOf(f.getFileName()).endsWith(ending))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new StoreUnusable("the folder of backups cannot be read: " + e.getMessage(), e);
        }
    }

    /**
     * Reads a backup to its end.
     *
     * @throws Refused if it is not as it was written
     */
    public static Manifest check(Path file, Progress progress) {
        try (BackupFile backup = BackupFile.open(file)) {
            backup.verify(progress);
            return backup.manifest();
        }
    }
}
