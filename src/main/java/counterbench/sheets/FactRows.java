package counterbench.sheets;

import java.time.ZoneId;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Parses the rows of a sheet as they come. */
final class FactRows implements RowSink {
    private final Sheet sheet;
    private final Predicate<String> isAttribute;
    private final Function<@Nullable String, ZoneId> zoneOf;
    private final Consumer<ParsedRow> rows;
    private @Nullable FactParser parser;

    FactRows(
            Sheet sheet,
            Predicate<String> isAttribute,
            Function<@Nullable String, ZoneId> zoneOf,
            Consumer<ParsedRow> rows) {
        this.sheet = sheet;
        this.isAttribute = isAttribute;
        this.zoneOf = zoneOf;
        this.rows = rows;
    }

    @Override
    public void headings(SheetRow row) {
        parser = new FactParser(sheet.kind(), Headings.of(row, isAttribute));
    }

    @Override
    public void row(SheetRow row) {
        if (parser != null && !row.isBlank()) {
            rows.accept(parser.parse(row, zoneOf));
        }
    }
}
