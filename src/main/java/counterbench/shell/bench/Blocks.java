package counterbench.shell.bench;

import counterbench.printing.Block;
import counterbench.shell.Invocation;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.util.List;

/** Shows on the screen what could be printed. */
final class Blocks {
    private Blocks() {}

    static void show(Invocation in, List<Block> blocks) {
        blocks.forEach(block -> show(in, block));
    }

    private static void show(Invocation in, Block block) {
        if (block instanceof Block.Heading heading) {
            in.print("");
            in.print(heading.text());
        } else if (block instanceof Block.Paragraph paragraph) {
            in.print("  " + paragraph.text());
        } else if (block instanceof Block.Caution caution) {
            in.print("  caution: " + caution.text());
        } else if (block instanceof Block.Table table) {
            show(in, table);
        }
    }

    private static void show(Invocation in, Block.Table table) {
        Column[] columns =
                table.columns().stream()
                        .map(column -> Column.text(column.heading()))
                        .toArray(Column[]::new);
        try (Rows rows = in.rows(columns)) {
            table.rows().forEach(row -> rows.add(row.toArray()));
        }
    }
}
