package counterbench.sheets;

import counterbench.shared.Refused;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Comma-separated files as RFC 4180 has them: UTF-8 with or without a byte order mark, quotation
 * marks doubled inside quotation marks and nowhere else. The kind is the file's name up to the
 * first dot or hyphen.
 */
public final class CsvFormat implements SheetFormat {
    /** Longer than any cell; a cell that fills it has lost its closing quotation mark. */
    private static final int BUFFER = 1 << 20;

    @Override
    public String ending() {
        return ".csv";
    }

    @Override
    public List<Sheet> sheets(Path file) {
        String word = String.valueOf(file.getFileName()).split("[.-]", 2)[0];
        return List.of(Sheet.csv(file, SheetFiles.kind(file, "the file's name says that", word)));
    }

    @Override
    public long aboutRows(Sheet sheet) {
        try (InputStream in = Files.newInputStream(sheet.file())) {
            return RowEstimate.of(in, Files.size(sheet.file()), "\n");
        } catch (IOException e) {
            return RowEstimate.UNKNOWN;
        }
    }

    @Override
    public void read(Sheet sheet, RowSink rows) {
        CsvRows handler = new CsvRows(sheet);
        try (InputStream in = Encodings.utf8(sheet.file())) {
            Utf8Reader text = new Utf8Reader(in);
            each(sheet, handler, text, rows);
            if (text.quotationMarks() % 2 != 0) {
                throw unclosed(sheet);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void each(Sheet sheet, CsvRows handler, Utf8Reader text, RowSink rows)
            throws IOException {
        boolean begun = false;
        try (CsvReader<SheetRow> reader = reader(handler, text)) {
            for (SheetRow row : reader) {
                if (begun) {
                    rows.row(row);
                } else if (!row.isBlank()) {
                    begun = true;
                    rows.headings(row);
                }
            }
        } catch (CsvParseException e) {
            throw because(e, handler.position());
        }
        if (!begun) {
            throw SheetFiles.refused(sheet.file(), "is empty", "the first row names the columns");
        }
    }

    private static CsvReader<SheetRow> reader(CsvRows handler, Utf8Reader text) {
        return CsvReader.builder()
                .skipEmptyLines(false)
                .acceptCharsAfterQuotes(false)
                .maxBufferSize(BUFFER)
                .build(handler, text);
    }

    private static RuntimeException because(CsvParseException e, RowPosition at) {
        for (@Nullable Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof Refused refused) {
                return refused;
            }
            if (String.valueOf(cause.getMessage()).contains("buffer size")) {
                return new Refused(
                        at.shown(),
                        "a cell is longer than " + BUFFER + " characters",
                        "look for a quotation mark without its partner");
            }
        }
        return new Refused(
                at.shown(),
                "a cell goes on after its closing quotation mark",
                "double quotation marks inside a cell, and put the whole cell into them");
    }

    private static Refused unclosed(Sheet sheet) {
        return SheetFiles.refused(
                sheet.file(),
                "the file ends inside a cell",
                "look for a quotation mark without its partner, or copy the file again");
    }

    @Override
    public SheetWriter write(Path file) {
        return new CsvSheetWriter(file);
    }
}
