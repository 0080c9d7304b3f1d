package counterbench.sheets;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Writes one sheet as RFC 4180 has it, with a byte order mark so that spreadsheets see UTF-8. */
final class CsvSheetWriter implements SheetWriter {
    private final Path file;
    private final CsvWriter csv;
    private int rows;
    private boolean finished;

    CsvSheetWriter(Path file) {
        this.file = file;
        try {
            Writer writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
            writer.write('\ufeff');
            csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(writer);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void sheet(String name) {
        // The file is the sheet.
    }

    @Override
    public void row(int number, List<Cell> cells) {
        while (++rows < number) {
            csv.writeRecord("");
        }
        csv.writeRecord(cells.stream().map(Cell::text).toList());
    }

    @Override
    public void finish() {
        finished = true;
    }

    @Override
    public void close() {
        try {
            csv.close();
            if (!finished) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
