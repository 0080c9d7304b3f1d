package counterbench.shell.print;

import counterbench.shared.Visible;
import counterbench.sheets.CsvGuard;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * RFC 4180 with a heading. Text that a spreadsheet would take for a formula is written behind an
 * apostrophe; numbers are left alone.
 */
final class CsvRows implements Rows {
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+(\\.[0-9]+)?");

    private final List<Column> columns;
    private final boolean screen;
    private final CsvWriter csv;

    CsvRows(PrintWriter out, List<Column> columns, boolean screen) {
        this.columns = columns;
        this.screen = screen;
        this.csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(out);
        csv.writeRecord(columns.stream().map(Column::key).toList());
    }

    @Override
    public void add(@Nullable Object... cells) {
        String[] texts = new String[cells.length];
        Arrays.setAll(texts, i -> text(columns.get(i), cells[i]));
        csv.writeRecord(texts);
    }

    private String text(Column column, @Nullable Object cell) {
        String text = cell == null ? "" : cell.toString();
        String shown = screen ? Visible.text(text) : text;
        boolean plain = column.number() && NUMBER.matcher(shown).matches();
        return plain ? shown : CsvGuard.guarded(shown);
    }

    @Override
    public void close() {
        try {
            csv.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
