package counterbench.care.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The tables and sequences that a store has. It is asked of the store itself, as a backup before a
 * migration meets tables that this program's own list does not know.
 *
 * @param tables columns of each table in their order, by table
 */
record Catalogue(Map<String, List<TableColumn>> tables, List<String> sequences) {
    /** Where the migrations keep what they have done. */
    static final String HISTORY = "flyway_schema_history";

    static Catalogue of(Connection connection) throws SQLException {
        Map<String, List<TableColumn>> tables = new TreeMap<>();
        query(
                connection,
                "select c.table_name, c.column_name, c.data_type from information_schema.columns c"
                        + " join information_schema.tables t on t.table_schema = c.table_schema"
                        + " and t.table_name = c.table_name where c.table_schema = ?"
                        + " and t.table_type = 'BASE TABLE' and c.table_name <> '"
                        + HISTORY
                        + "' order by c.table_name, c.ordinal_position",
                row ->
                        tables.computeIfAbsent(name(row, 1), t -> new ArrayList<>())
                                .add(TableColumn.of(name(row, 2), row.getString(3))));
        List<String> sequences = new ArrayList<>();
        query(
                connection,
                "select sequence_name from information_schema.sequences where sequence_schema = ?"
                        + " order by sequence_name",
                row -> sequences.add(name(row, 1)));
        return new Catalogue(tables, sequences);
    }

    private interface EachRow {
        void take(ResultSet row) throws SQLException;
    }

    private static void query(Connection connection, String sql, EachRow each) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            statement.setString(1, connection.getSchema());
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    each.take(rows);
                }
            }
        }
    }

    private static String name(ResultSet row, int at) throws SQLException {
        return row.getString(at).toLowerCase(Locale.ROOT);
    }
}
