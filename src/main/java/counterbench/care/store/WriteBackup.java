package counterbench.care.store;

import counterbench.care.Manifest;
import counterbench.db.Migrations;
import counterbench.db.Store;
import counterbench.shared.Progress;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.jooq.DSLContext;

/**
 * Writes all that a store holds, as it is at one moment, into a zip that either kind of store can
 * be restored from. Rows go through one at a time.
 */
final class WriteBackup {
    private static final int CHUNK = 1_000;

    private final Store store;
    private final Progress progress;

    WriteBackup(Store store, Progress progress) {
        this.store = store;
        this.progress = progress;
    }

    Manifest to(OutputStream file, Instant now) {
        String version = Migrations.versionOf(store).orElse("");
        return store.readSnapshot(sql -> write(sql, file, version, now));
    }

    private Manifest write(DSLContext sql, OutputStream file, String version, Instant now) {
        return sql.connectionResult(
                connection -> {
                    try {
                        return write(connection, file, version, now);
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                });
    }

    private Manifest write(Connection connection, OutputStream file, String version, Instant now)
            throws SQLException, IOException {
        ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(file, 1 << 16));
        Manifest manifest = tables(connection, zip, version, now);
        zip.putNextEntry(new ZipEntry(BackupFile.MANIFEST));
        zip.write(manifest.text().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
        zip.finish();
        zip.flush();
        return manifest;
    }

    private Manifest tables(Connection connection, ZipOutputStream zip, String version, Instant now)
            throws SQLException, IOException {
        Catalogue catalogue = Catalogue.of(connection);
        List<Manifest.Table> tables = new ArrayList<>();
        for (Map.Entry<String, List<TableColumn>> table : catalogue.tables().entrySet()) {
            tables.add(write(connection, zip, table.getKey(), table.getValue()));
        }
        List<Manifest.Sequence> sequences = new ArrayList<>();
        for (String sequence : catalogue.sequences()) {
            sequences.add(new Manifest.Sequence(sequence, next(connection, sequence)));
        }
        return new Manifest(version, now, tables, sequences);
    }

    /**
     * Takes a number, which is beyond all that the snapshot holds; a number left out harms nobody.
     */
    private static long next(Connection connection, String sequence) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("select nextval('" + sequence + "')")) {
            row.next();
            return row.getLong(1);
        }
    }

    private Manifest.Table write(
            Connection connection, ZipOutputStream zip, String table, List<TableColumn> columns)
            throws SQLException, IOException {
        progress.begin("writing " + table, 0);
        zip.putNextEntry(new ZipEntry(TableFile.nameOf(table)));
        MessageDigest digest = sha256();
        OutputStream digested = new DigestOutputStream(zip, digest);
        Writer text = new OutputStreamWriter(digested, StandardCharsets.UTF_8);
        long rows = writeRows(connection, text, table, columns);
        text.flush();
        zip.closeEntry();
        return new Manifest.Table(table, rows, HexFormat.of().formatHex(digest.digest()));
    }

    private long writeRows(
            Connection connection, Writer text, String table, List<TableColumn> columns)
            throws SQLException, IOException {
        CsvWriter csv = CsvWriter.builder().build(text);
        csv.writeRecord(columns.stream().map(TableColumn::name).toList());
        String names = String.join(", ", columns.stream().map(TableColumn::name).toList());
        long count = 0;
        try (Statement statement = connection.createStatement()) {
            statement.setFetchSize(CHUNK);
            try (ResultSet rows = statement.executeQuery("select " + names + " from " + table)) {
                while (rows.next()) {
                    csv.writeRecord(cells(rows, columns));
                    progress.step(1);
                    count++;
                }
            }
            csv.flush();
        }
        return count;
    }

    private static List<String> cells(ResultSet rows, List<TableColumn> columns)
            throws SQLException {
        List<String> cells = new ArrayList<>(columns.size());
        for (int i = 0; i < columns.size(); i++) {
            cells.add(TableFile.written(columns.get(i).read(rows, i + 1)));
        }
        return cells;
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
