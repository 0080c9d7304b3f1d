package counterbench.sheets;

import counterbench.facts.Canonical;
import counterbench.facts.Column;
import counterbench.facts.ColumnType;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Makes facts of the rows of one sheet, or says of each cell why it cannot. */
final class FactParser {
    private static final Column TEXT = new Column("site", ColumnType.TEXT, false, List.of());

    private final FactKind kind;
    private final Headings headings;

    FactParser(FactKind kind, Headings headings) {
        this.kind = kind;
        this.headings = headings;
    }

    /** Parses a row; local times are those of the zone of the site that the row names. */
    ParsedRow parse(SheetRow row, Function<@Nullable String, ZoneId> zoneOf) {
        List<RowProblem> problems = new ArrayList<>(0);
        checkWidth(row, problems);
        String site = word(row, headings.site(), "site", problems);
        boolean plain = problems.isEmpty();
        String ref = word(row, headings.ref(), "ref", problems);
        CellParser cells = new CellParser(kind, zoneOf.apply(site));
        List<@Nullable Object> values = new ArrayList<>(kind.columns().size());
        for (int i = 0; i < kind.columns().size(); i++) {
            Column column = kind.columns().get(i);
            values.add(
                    column.type() == ColumnType.ATTRIBUTES
                            ? attributes(row, cells, problems)
                            : value(row, headings.columns().get(i), column, cells, problems));
        }
        FactRow said = new FactRow(kind, values, ref);
        return problems.isEmpty()
                ? new ParsedRow(row.at(), said, null, site, problems)
                : new ParsedRow(row.at(), null, plain ? said : null, site, problems);
    }

    private void checkWidth(SheetRow row, List<RowProblem> problems) {
        int count = row.cells().size();
        boolean csv = row.at().sheet().isCsv();
        if (csv && count != headings.count()) {
            problems.add(
                    new RowProblem(
                            row.at(),
                            "",
                            "",
                            "has " + cells(count) + " under " + headings.count() + " headings",
                            "give each heading one cell, and put a cell with a comma into"
                                    + " quotation marks"));
        }
        IntStream beyond = csv ? IntStream.empty() : IntStream.range(headings.count(), count);
        IntStream.concat(headings.unnamed().stream().mapToInt(Integer::intValue), beyond)
                .filter(i -> !row.cell(i).isBlank())
                .findFirst()
                .ifPresent(i -> problems.add(underNone(row, i)));
    }

    private static RowProblem underNone(SheetRow row, int place) {
        return new RowProblem(
                row.at(),
                "",
                row.cell(place).text(),
                "stands under no heading",
                "give the column a heading; one of your own begins with x-");
    }

    private static String cells(int count) {
        return count == 1 ? "1 cell" : count + " cells";
    }

    private @Nullable String word(
            SheetRow row, int place, String heading, List<RowProblem> problems) {
        Cell cell = cell(row, place);
        return cell.isBlank()
                ? null
                : CellParser.text(TEXT, cell, complaint(row, heading, cell, problems));
    }

    private @Nullable Object value(
            SheetRow row, int place, Column column, CellParser cells, List<RowProblem> problems) {
        Cell cell = cell(row, place);
        Complaint complaint = complaint(row, column.heading(), cell, problems);
        if (!cell.isBlank()) {
            return cells.value(column, cell, complaint);
        }
        if (column.required()) {
            complaint.wrong("is empty", "every row of " + kind.word() + " needs it");
        }
        return null;
    }

    private @Nullable String attributes(SheetRow row, CellParser cells, List<RowProblem> problems) {
        Map<String, String> said = new TreeMap<>();
        for (Map.Entry<String, Integer> attribute : headings.attributes().entrySet()) {
            Cell cell = cell(row, attribute.getValue());
            Column column = new Column(attribute.getKey(), ColumnType.TEXT, false, List.of());
            Complaint complaint = complaint(row, attribute.getKey(), cell, problems);
            Object answer = cell.isBlank() ? null : cells.value(column, cell, complaint);
            if (answer instanceof String text) {
                said.put(attribute.getKey(), ListCells.answer(text, complaint));
            }
        }
        return said.isEmpty() ? null : Canonical.attributes(said);
    }

    private Cell cell(SheetRow row, int place) {
        if (place < 0) {
            return Cell.EMPTY;
        }
        Cell cell = row.cell(place);
        return row.at().sheet().isCsv() ? Cell.text(CsvGuard.unguarded(cell.text())) : cell;
    }

    private static Complaint complaint(
            SheetRow row, String heading, Cell cell, List<RowProblem> problems) {
        return (wrong, right) ->
                problems.add(new RowProblem(row.at(), heading, cell.text(), wrong, right));
    }
}
