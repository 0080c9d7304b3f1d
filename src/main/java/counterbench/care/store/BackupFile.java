package counterbench.care.store;

import counterbench.care.Manifest;
import counterbench.shared.Progress;
import counterbench.shared.Refused;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.sql.SQLException;
import java.util.HexFormat;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** A backup that lies in a file. */
final class BackupFile implements AutoCloseable {
    /** The manifest's name in the zip. */
    static final String MANIFEST = "manifest.txt";

    private static final int LONGEST_MANIFEST = 1 << 20;

    private final Path file;
    private final ZipFile zip;
    private final Manifest manifest;

    private BackupFile(Path file, ZipFile zip, Manifest manifest) {
        this.file = file;
        this.zip = zip;
        this.manifest = manifest;
    }

    /**
     * Opens it and reads its manifest.
     *
     * @throws Refused if it is no backup, or one that was cut off or changed
     */
    static BackupFile open(Path file) {
        if (!Files.exists(file)) {
            throw broken(file, "there is no such file");
        }
        ZipFile zip;
        try {
            zip = new ZipFile(file.toFile());
        } catch (IOException e) {
            throw broken(file, "it cannot be read as a backup (" + e.getMessage() + ")");
        }
        try {
            String text = new String(read(file, zip, MANIFEST), StandardCharsets.UTF_8);
            Manifest manifest =
                    Manifest.of(text)
                            .orElseThrow(
                                    () -> broken(file, "its manifest is not as it was written"));
            return new BackupFile(file, zip, manifest);
        } catch (IOException | RuntimeException e) {
            close(zip);
            throw e instanceof Refused refused
                    ? refused
                    : broken(file, "it cannot be read (" + e.getMessage() + ")");
        }
    }

    private static byte[] read(Path file, ZipFile zip, String name) throws IOException {
        try (InputStream in = stream(file, zip, name)) {
            return in.readNBytes(LONGEST_MANIFEST);
        }
    }

    private static InputStream stream(Path file, ZipFile zip, String name) throws IOException {
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) {
            throw broken(file, name + " is missing in it");
        }
        return new BufferedInputStream(zip.getInputStream(entry), 1 << 16);
    }

    private static Refused broken(Path file, String why) {
        return new Refused("backup \"" + file + "\"", why, "take another backup");
    }

    Manifest manifest() {
        return manifest;
    }

    /**
     * Reads it to the end.
     *
     * @throws Refused if a table's file is not as it was written
     */
    void verify(Progress progress) {
        for (Manifest.Table table : manifest.tables()) {
            progress.begin("checking " + table.name(), 0);
            if (!digestOf(table).equals(table.sha256())) {
                throw broken(file, "its table " + table.name() + " is not as it was written");
            }
            progress.step(1);
        }
    }

    private String digestOf(Manifest.Table table) {
        MessageDigest digest = WriteBackup.sha256();
        try (InputStream in =
                new DigestInputStream(stream(file, zip, TableFile.nameOf(table.name())), digest)) {
            in.transferTo(OutputStream.nullOutputStream());
        } catch (IOException e) {
            throw broken(file, "its table " + table.name() + " cannot be read");
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    /** Takes the rows of a table, the heading first, one at a time. */
    @FunctionalInterface
    interface RowReader {
        void read(Iterable<CsvRecord> rows) throws SQLException;
    }

    /** Gives the rows of a table to a reader. */
    void rows(Manifest.Table table, RowReader reader) throws SQLException {
        try (InputStream in = stream(file, zip, TableFile.nameOf(table.name()));
                CsvReader<CsvRecord> csv =
                        CsvReader.builder()
                                .ofCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            reader.read(csv);
        } catch (IOException e) {
            throw broken(file, "its table " + table.name() + " cannot be read");
        }
    }

    private static void close(ZipFile zip) {
        try {
            zip.close();
        } catch (IOException e) {
            // It was only read.
        }
    }

    @Override
    public void close() {
        close(zip);
    }
}
