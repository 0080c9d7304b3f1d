package counterbench.printing;

import counterbench.labels.gs1.ElementString;
import java.util.List;

/** A part of a document; they stand one below the other. */
public sealed interface Block {
    /** A heading. It stays on one page with the beginning of what follows. */
    record Heading(String text) implements Block {}

    /** Text, broken into lines where it must be. */
    record Paragraph(String text) implements Block {}

    /** Text that nobody may miss: in a frame, in strong letters. */
    record Caution(String text) implements Block {}

    /** A symbol to be scanned, with the same in readable form beside it. */
    record Symbol(ElementString content) implements Block {}

    /**
     * A table. Its headings are said again on each page that it goes on to.
     *
     * @param rows as many cells each as there are columns; long ones are broken into lines
     */
    record Table(List<Column> columns, List<List<String>> rows) implements Block {
        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            for (List<String> row : rows) {
                if (row.size() != columns.size()) {
                    throw new IllegalArgumentException("a row has another number of cells: " + row);
                }
            }
        }
    }

    /**
     * A column of a table.
     *
     * @param share how wide it is beside the others
     */
    record Column(String heading, int share) {
        public Column {
            if (share < 1) {
                throw new IllegalArgumentException("a column has some width");
            }
        }
    }
}
