package counterbench.care.store;

import counterbench.care.Manifest;
import counterbench.db.Store;
import counterbench.shared.Progress;
import counterbench.shared.Refused;
import counterbench.shared.StoreUnusable;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/**
 * Fills empty tables from a backup. Sites, and what refers to them, come last and in one
 * transaction: until then the store counts as empty, and restoring can begin again.
 */
final class LoadTables {
    private static final List<String> LAST = List.of("site", "journal_head", "entry");
    private static final int CHUNK = 1_000;

    private final Store store;
    private final BackupFile backup;
    private final Progress progress;

    LoadTables(Store store, BackupFile backup, Progress progress) {
        this.store = store;
        this.backup = backup;
        this.progress = progress;
    }

    void run() {
        try (Connection connection = store.connect()) {
            connection.setAutoCommit(false);
            Catalogue catalogue = Catalogue.of(connection);
            for (Manifest.Table table : backup.manifest().tables()) {
                if (!LAST.contains(table.name())) {
                    load(connection, catalogue, table, true);
                }
            }
            restartSequences(connection);
            for (String name : LAST) {
                load(connection, catalogue, named(name), false);
            }
            connection.commit();
            if (store.isEmbedded()) {
                execute(connection, "checkpoint sync");
            }
        } catch (SQLException e) {
            throw new StoreUnusable("the store cannot be filled: " + e.getMessage(), e);
        }
    }

    private Manifest.Table named(String name) {
        Optional<Manifest.Table> table =
                backup.manifest().tables().stream().filter(t -> t.name().equals(name)).findFirst();
        return table.orElseThrow(() -> unfit("it has no table " + name));
    }

    private static Refused unfit(String why) {
        return new Refused("backup", why + ", which its version has", "take another backup");
    }

    private void restartSequences(Connection connection) throws SQLException {
        for (Manifest.Sequence sequence : backup.manifest().sequences()) {
            execute(
                    connection,
                    "alter sequence " + sequence.name() + " restart with " + sequence.next());
        }
        connection.commit();
    }

    private static void execute(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private void load(
            Connection connection, Catalogue catalogue, Manifest.Table table, boolean inChunks)
            throws SQLException {
        progress.begin("restoring " + table.name(), table.rows());
        List<TableColumn> columns = catalogue.tables().getOrDefault(table.name(), List.of());
        backup.rows(table, rows -> insert(connection, table, columns, rows.iterator(), inChunks));
    }

    private void insert(
            Connection connection,
            Manifest.Table table,
            List<TableColumn> columns,
            Iterator<CsvRecord> rows,
            boolean inChunks)
            throws SQLException {
        List<TableColumn> said = inOrder(table, columns, rows.next().getFields());
        try (PreparedStatement insert = connection.prepareStatement(sql(table, said))) {
            int waiting = 0;
            while (rows.hasNext()) {
                bind(insert, said, rows.next());
                insert.addBatch();
                progress.step(1);
                if (++waiting == CHUNK) {
                    insert.executeBatch();
                    waiting = 0;
                    if (inChunks) {
                        connection.commit();
                    }
                }
            }
            insert.executeBatch();
        }
        if (inChunks) {
            connection.commit();
        }
    }

    private static List<TableColumn> inOrder(
            Manifest.Table table, List<TableColumn> columns, List<String> heading) {
        List<TableColumn> said = new ArrayList<>();
        for (String name : heading) {
            said.add(
                    columns.stream()
                            .filter(c -> c.name().equals(name))
                            .findFirst()
                            .orElseThrow(
                                    () -> unfit("it has no column " + table.name() + "." + name)));
        }
        return said;
    }

    private static String sql(Manifest.Table table, List<TableColumn> columns) {
        return "insert into "
                + table.name()
                + " ("
                + String.join(", ", columns.stream().map(TableColumn::name).toList())
                + ") values ("
                + String.join(", ", Collections.nCopies(columns.size(), "?"))
                + ")";
    }

    private static void bind(PreparedStatement insert, List<TableColumn> columns, CsvRecord row)
            throws SQLException {
        for (int i = 0; i < columns.size(); i++) {
            columns.get(i).bind(insert, i + 1, TableFile.read(row.getField(i)));
        }
    }
}
