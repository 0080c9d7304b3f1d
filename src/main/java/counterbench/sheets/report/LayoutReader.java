package counterbench.sheets.report;

import counterbench.shared.Problem;
import counterbench.shared.Refused;
import counterbench.sheets.SheetLimits;
import counterbench.sheets.report.SheetLayout.Apart;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.Node;

/** Reads the YAML of one layout; every problem is refused with its line and column. */
final class LayoutReader {
    private static final Pattern FORBIDDEN_IN_NAMES = Pattern.compile("[:\\\\/?*\\[\\]]|^'|'$");
    private static final int ROOM_FOR_NUMBER = 5;
    private static final List<String> PAPERS = List.of("letter", "a4", "tabloid", "a3");

    private final String file;
    private final @Nullable ReportLayout own;
    private final List<Problem> problems = new ArrayList<>();

    /**
     * @param own the program's own layout, which says what sheets and fields there are; null for
     *     that layout itself
     */
    LayoutReader(String file, @Nullable ReportLayout own) {
        this.file = file;
        this.own = own;
    }

    /**
     * @throws Refused with every problem of the file
     */
    ReportLayout read(String yaml) {
        ReportLayout layout = layout(new LayoutNode(file, compose(yaml), problems));
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
        return layout;
    }

    private Node compose(String yaml) {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(200_000);
        options.setNestingDepthLimit(10);
        options.setMaxAliasesForCollections(10);
        try {
            Node root = new Yaml(options).compose(new StringReader(yaml));
            if (root != null) {
                return root;
            }
        } catch (MarkedYAMLException e) {
            int line = e.getProblemMark() == null ? 1 : e.getProblemMark().getLine() + 1;
            throw new Refused(file + ":" + line, String.valueOf(e.getProblem()), "mend the YAML");
        } catch (YAMLException e) {
            throw new Refused(file, String.valueOf(e.getMessage()), "mend the YAML");
        }
        throw new Refused(file, "is empty", "name the sheets and their columns");
    }

    private ReportLayout layout(LayoutNode root) {
        Map<String, LayoutNode> keys =
                root.map(List.of("title", "paper", "notes", "sheets", "charts"));
        List<SheetLayout> sheets = new ArrayList<>();
        for (LayoutNode node : items(keys.get("sheets"))) {
            sheet(node, sheets);
        }
        if (sheets.isEmpty() && problems.isEmpty()) {
            root.refuse("sheets", "has no sheet", "name at least one");
        }
        LayoutNode notes = keys.get("notes");
        ChartReader charts = new ChartReader(sheets);
        return new ReportLayout(
                text(keys.get("title"), "title", own == null ? file : own.title()),
                paper(keys.get("paper"), own == null ? ReportLayout.Paper.LETTER : own.paper()),
                notes == null ? ReportLayout.NOTES : name(notes),
                sheets,
                items(keys.get("charts")).stream().flatMap(n -> charts.read(n).stream()).toList(),
                leftOut(sheets));
    }

    private Set<String> leftOut(List<SheetLayout> sheets) {
        Set<String> leftOut = new LinkedHashSet<>(own == null ? List.of() : sheetNames(own));
        sheets.forEach(s -> leftOut.remove(s.sheet()));
        return leftOut;
    }

    private static List<LayoutNode> items(@Nullable LayoutNode node) {
        return node == null ? List.of() : node.list();
    }

    /** A text, or what holds where none is said. */
    static String text(@Nullable LayoutNode node, String what, String otherwise) {
        return node == null ? otherwise : node.text(what);
    }

    private static ReportLayout.Paper paper(
            @Nullable LayoutNode node, ReportLayout.Paper otherwise) {
        return node == null
                ? otherwise
                : ReportLayout.Paper.valueOf(upper(node.oneOf("paper", PAPERS)));
    }

    private void sheet(LayoutNode node, List<SheetLayout> sheets) {
        Map<String, LayoutNode> keys =
                node.map(List.of("sheet", "title", "means", "columns", "apart"));
        LayoutNode named = keys.get("sheet");
        if (named == null || !keys.containsKey("columns")) {
            node.refuse("sheet", "has no name or no columns", "write sheet: and columns:");
            return;
        }
        String sheet = own == null ? name(named) : named.known("sheet", sheetNames(own)).orElse("");
        if (sheet.isEmpty()) {
            return;
        }
        if (sheets.stream().anyMatch(s -> s.sheet().equals(sheet))) {
            named.refuse("sheet " + LayoutNode.quoted(sheet), "is there twice", "remove one");
            return;
        }
        SheetLayout known = own == null ? null : own.sheet(sheet).orElse(null);
        List<ColumnLayout> columns = new ColumnReader(known).columns(items(keys.get("columns")));
        LayoutNode title = keys.get("title");
        if (!columns.isEmpty()) {
            sheets.add(
                    new SheetLayout(
                            sheet,
                            title == null ? sheet : name(title),
                            text(keys.get("means"), "means", known == null ? "" : known.means()),
                            columns,
                            known == null ? ColumnReader.fields(columns) : known.fields(),
                            apart(keys.get("apart"), columns, known)));
        }
    }

    private static @Nullable Apart apart(
            @Nullable LayoutNode node, List<ColumnLayout> columns, @Nullable SheetLayout known) {
        if (node == null) {
            return known == null ? null : known.apart();
        }
        Map<String, LayoutNode> keys = node.map(List.of("field", "are", "heading"));
        LayoutNode field = keys.get("field");
        LayoutNode are = keys.get("are");
        LayoutNode heading = keys.get("heading");
        if (field == null || are == null || heading == null) {
            node.refuse("apart", "has no field, are or heading", "write all three");
            return null;
        }
        Set<String> fields = known == null ? ColumnReader.fields(columns) : known.fields();
        return new Apart(
                field.oneOf("field", fields),
                are.list().stream().map(item -> item.text("what it holds")).toList(),
                heading.text("heading"));
    }

    private static List<String> sheetNames(ReportLayout layout) {
        return layout.sheets().stream().map(SheetLayout::sheet).toList();
    }

    /** A name that a sheet can have, and its continuations with a number after it. */
    private static String name(LayoutNode node) {
        String name = node.text("the sheet's name");
        if (name.length() > SheetLimits.NAME - ROOM_FOR_NUMBER
                || FORBIDDEN_IN_NAMES.matcher(name).find()) {
            node.refuse(
                    "sheet " + LayoutNode.quoted(name),
                    "is too long or has one of : \\ / ? * [ ]",
                    "use at most " + (SheetLimits.NAME - ROOM_FOR_NUMBER) + " other characters");
        }
        return name;
    }

    static String upper(String word) {
        return word.toUpperCase(Locale.ROOT);
    }
}
