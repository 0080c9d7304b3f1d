package counterbench.sheets.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Reads the columns of one sheet of a layout. What a column leaves out is as the program has it.
 */
final class ColumnReader {
    private static final int WIDEST = 255;

    private final @Nullable SheetLayout known;

    /**
     * @param known the sheet in the program's own layout; null for that layout itself
     */
    ColumnReader(@Nullable SheetLayout known) {
        this.known = known;
    }

    /** The fields of columns, in their order. */
    static Set<String> fields(List<ColumnLayout> columns) {
        return columns.stream()
                .map(ColumnLayout::field)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Columns, each of a field of its own. */
    List<ColumnLayout> columns(List<LayoutNode> nodes) {
        List<ColumnLayout> columns = new ArrayList<>();
        for (LayoutNode item : nodes) {
            ColumnLayout column = column(item);
            if (column != null && fields(columns).contains(column.field())) {
                item.refuse(
                        "field " + LayoutNode.quoted(column.field()), "is there twice", "keep one");
            } else if (column != null) {
                columns.add(column);
            }
        }
        return columns;
    }

    private @Nullable ColumnLayout column(LayoutNode node) {
        Map<String, LayoutNode> keys =
                node.map(List.of("field", "heading", "width", "format", "total", "means"));
        LayoutNode named = keys.get("field");
        if (named == null) {
            node.refuse("column", "has no field", "write field: and the field's name");
            return null;
        }
        String field = field(named);
        if (field.isEmpty()) {
            return null;
        }
        ColumnLayout usual = usual(field);
        CellFormat format = format(keys.get("format"), usual);
        return new ColumnLayout(
                field,
                LayoutReader.text(
                        keys.get("heading"), "heading", usual == null ? field : usual.heading()),
                width(keys.get("width"), usual),
                format,
                total(keys.get("total"), format, usual),
                LayoutReader.text(keys.get("means"), "means", usual == null ? "" : usual.means()));
    }

    private String field(LayoutNode named) {
        return known == null
                ? named.text("field")
                : named.known("field", new TreeSet<>(known.fields())).orElse("");
    }

    private @Nullable ColumnLayout usual(String field) {
        int column = known == null ? -1 : known.indexOf(field);
        return known == null || column < 0 ? null : known.columns().get(column);
    }

    private static CellFormat format(@Nullable LayoutNode node, @Nullable ColumnLayout usual) {
        CellFormat otherwise = usual == null ? CellFormat.TEXT : usual.format();
        if (node == null) {
            return otherwise;
        }
        List<String> words = Arrays.stream(CellFormat.values()).map(ColumnReader::lower).toList();
        CellFormat format = CellFormat.valueOf(LayoutReader.upper(node.oneOf("format", words)));
        if (usual != null && !format.takes(otherwise)) {
            node.refuse(
                    "format " + lower(format),
                    usual.field() + " is " + lower(otherwise),
                    otherwise == CellFormat.TEXT ? "use text" : "use that, or text");
            return otherwise;
        }
        return format;
    }

    private static int width(@Nullable LayoutNode node, @Nullable ColumnLayout usual) {
        if (node == null) {
            return usual == null ? 0 : usual.width();
        }
        String text = node.text("width");
        boolean fits = text.matches("[0-9]{1,3}") && Integer.parseInt(text) <= WIDEST;
        if (!fits) {
            node.refuse(
                    "width " + LayoutNode.quoted(text),
                    "is no width",
                    "write characters, 1 to " + WIDEST + ", or leave it out to fit");
        }
        return fits ? Integer.parseInt(text) : 0;
    }

    private static boolean total(
            @Nullable LayoutNode node, CellFormat format, @Nullable ColumnLayout usual) {
        if (node == null) {
            return usual != null && usual.total() && format.isNumber();
        }
        boolean total = node.oneOf("total", List.of("false", "true")).equals("true");
        if (total && !format.isNumber()) {
            node.refuse("total", lower(format) + " cannot be summed", "leave it out");
        }
        return total && format.isNumber();
    }

    private static String lower(CellFormat format) {
        return format.name().toLowerCase(Locale.ROOT);
    }
}
