package counterbench.sheets.poi;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.facts.Column;
import counterbench.facts.ColumnType;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.sheets.Cell;
import counterbench.sheets.CsvFormat;
import counterbench.sheets.CsvGuard;
import counterbench.sheets.Read;
import counterbench.sheets.SheetFormat;
import counterbench.sheets.SheetWriter;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Random facts of every kind, written as sheets and read again, are the same facts. */
class RoundTripTest {
    private static final int ROWS = 60;
    private static final String LETTERS = "abc XYZ0123-.,;\"'=+@é漆𝄞";

    @TempDir Path folder;
    private final Random random = new Random();

    @ParameterizedTest
    @EnumSource
    void facts_of_a_kind_come_back_the_same(FactKind kind) throws IOException {
        if (!kind.isInSheets()) {
            return;
        }
        long seed = System.nanoTime();
        random.setSeed(seed);
        List<Column> columns = shuffled(kind);
        List<List<@Nullable Object>> rows = rows(columns);

        assertThat(read(new CsvFormat(), kind, columns, rows))
                .as("seed %d, csv", seed)
                .isEqualTo(rows);
        assertThat(read(new XlsxFormat(), kind, columns, rows))
                .as("seed %d, xlsx", seed)
                .isEqualTo(rows);
    }

    private List<Column> shuffled(FactKind kind) {
        List<Column> columns = new ArrayList<>(kind.columns());
        columns.removeIf(c -> c.type() == ColumnType.ATTRIBUTES);
        Collections.shuffle(columns, random);
        return columns;
    }

    private List<List<@Nullable Object>> rows(List<Column> columns) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (int i = 0; i < ROWS; i++) {
            List<@Nullable Object> row = new ArrayList<>();
            columns.forEach(c -> row.add(c.required() || random.nextBoolean() ? value(c) : null));
            rows.add(row);
        }
        return rows;
    }

    private List<List<@Nullable Object>> read(
            SheetFormat format,
            FactKind kind,
            List<Column> columns,
            List<List<@Nullable Object>> rows)
            throws IOException {
        Path file = folder.resolve(kind.word() + format.ending());
        boolean csv = format instanceof CsvFormat;
        try (SheetWriter writer = format.write(file)) {
            writer.sheet(kind.word());
            writer.row(1, columns.stream().map(c -> Cell.text(c.heading())).toList());
            for (int i = 0; i < rows.size(); i++) {
                writer.row(i + 2, cells(columns, rows.get(i), csv));
            }
            writer.finish();
        }
        List<FactRow> facts = Read.facts(file);
        Files.delete(file);
        return facts.stream().map(f -> ordered(f, columns)).toList();
    }

    private static List<@Nullable Object> ordered(FactRow fact, List<Column> columns) {
        List<@Nullable Object> values = new ArrayList<>();
        columns.forEach(c -> values.add(fact.get(c.heading())));
        return values;
    }

    private List<Cell> cells(List<Column> columns, List<@Nullable Object> row, boolean csv) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            Object value = row.get(i);
            cells.add(value == null ? Cell.EMPTY : csv ? csvCell(value) : cell(value));
        }
        return cells;
    }

    private static Cell csvCell(Object value) {
        return value instanceof String text
                ? Cell.text(CsvGuard.guarded(text))
                : Cell.text(value.toString());
    }

    private Cell cell(Object value) {
        if (value instanceof BigDecimal || value instanceof Long) {
            return new Cell(Cell.Form.SHAPED_NUMBER, value.toString());
        }
        if (value instanceof LocalDate) {
            return new Cell(Cell.Form.DATE, value.toString());
        }
        if (value instanceof Instant instant) {
            LocalDateTime local = instant.atZone(Read.CHICAGO).toLocalDateTime();
            return new Cell(Cell.Form.DATE, local.toString());
        }
        return Cell.text(value.toString());
    }

    private Object value(Column column) {
        if (!column.words().isEmpty()) {
            return column.words().get(random.nextInt(column.words().size()));
        }
        return switch (column.type()) {
            case TIME -> time();
            case DATE -> LocalDate.of(1990, 1, 1).plusDays(random.nextInt(40_000));
            case QUANTITY, DECIMAL, AMOUNT -> number(column.type().maxScale());
            case WHOLE -> (long) random.nextInt(1_000_000);
            case PARTS -> "QM-1:" + (1 + random.nextInt(9)) + "; QM-2:0.5";
            case ROLES -> random.nextBoolean() ? "parts" : "lead, parts";
            default -> text();
        };
    }

    /** A time at noon or so, when clocks do not change. */
    private Instant time() {
        return LocalDate.of(1990, 1, 1)
                .plusDays(random.nextInt(40_000))
                .atTime(12, random.nextInt(60), random.nextInt(60))
                .atZone(Read.CHICAGO)
                .toInstant()
                .truncatedTo(ChronoUnit.SECONDS);
    }

    private BigDecimal number(int scale) {
        return BigDecimal.valueOf(random.nextInt(1_000_000_000), random.nextInt(scale + 1))
                .setScale(scale);
    }

    private String text() {
        StringBuilder text = new StringBuilder("x");
        int[] letters = LETTERS.codePoints().toArray();
        for (int i = random.nextInt(20); i > 0; i--) {
            text.appendCodePoint(letters[random.nextInt(letters.length)]);
        }
        return Objects.requireNonNull(text.append('x').substring(random.nextInt(2)).strip());
    }
}
