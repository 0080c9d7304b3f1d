package counterbench.shell.print;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A layout of some of the columns. */
final class Fewer implements RowLayout {
    private final List<Column> columns;
    private final List<Integer> kept;
    private final RowLayout layout;

    /**
     * @param columns all of them
     * @param kept the places of those that are shown
     * @param layout of those
     */
    Fewer(List<Column> columns, List<Integer> kept, RowLayout layout) {
        this.columns = columns;
        this.kept = kept;
        this.layout = layout;
    }

    /** All columns, then ever fewer of the spare ones, the last of them left out first. */
    static List<List<Integer>> of(List<Column> columns) {
        List<Integer> kept = new ArrayList<>(IntStream.range(0, columns.size()).boxed().toList());
        List<List<Integer>> choices = new ArrayList<>();
        choices.add(List.copyOf(kept));
        for (int i = columns.size() - 1; i >= 0; i--) {
            if (columns.get(i).spare()) {
                kept.remove(Integer.valueOf(i));
                choices.add(List.copyOf(kept));
            }
        }
        return choices;
    }

    static <T> List<T> pick(List<T> all, List<Integer> kept) {
        return kept.stream().map(all::get).toList();
    }

    @Override
    public void heading() {
        layout.heading();
    }

    @Override
    public void row(List<String> cells) {
        layout.row(pick(cells, kept));
    }

    @Override
    public List<Column> leftOut() {
        return IntStream.range(0, columns.size())
                .filter(i -> !kept.contains(i))
                .mapToObj(columns::get)
                .toList();
    }
}
