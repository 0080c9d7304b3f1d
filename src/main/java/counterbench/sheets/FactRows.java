package counterbench.sheets;

import java.time.ZoneId;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Parses the rows of a sheet as they come. */
final class FactRows implements RowSink {
    private final Sheet sheet;
    private final Set<String> attributes;
    private final Function<@Nullable String, ZoneId> zoneOf;
    private final Consumer<ParsedRow> rows;
    private @Nullable FactParser parser;

    FactRows(
            Sheet sheet,
            Set<String> attributes,
            Function<@Nullable String, ZoneId> zoneOf,
            Consumer<ParsedRow> rows) {
        this.sheet = sheet;
        this.attributes = attributes;
        this.zoneOf = zoneOf;
        this.rows = rows;
    }

    @Override
    public void headings(SheetRow row) {
        parser = new FactParser(sheet.kind(), Headings.of(row, attributes));
    }

    @Override
    public void row(SheetRow row) {
        if (parser != null && !row.isBlank()) {
            rows.accept(parser.parse(row, zoneOf));
        }
    }
}
