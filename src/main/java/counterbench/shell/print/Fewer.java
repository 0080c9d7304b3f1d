package counterbench.shell.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** A layout of some of the columns. */
final class Fewer implements RowLayout {
    private final List<Column> columns;
    private final List<Integer> kept;
    private final RowLayout layout;
    private final NavigableSet<Integer> missed = new TreeSet<>();

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

    /**
     * All columns, then ever fewer of the spare ones: those without anything in them first, then by
     * need, and of equal ones the last.
     */
    static List<List<Integer>> of(List<Column> columns, List<List<String>> sample) {
        List<Integer> kept = new ArrayList<>(IntStream.range(0, columns.size()).boxed().toList());
        List<List<Integer>> choices = new ArrayList<>();
        choices.add(List.copyOf(kept));
        IntStream.range(0, columns.size())
                .boxed()
                .filter(i -> columns.get(i).isSpare())
                .sorted(
                        Comparator.<Integer, Boolean>comparing(i -> !isEmpty(i, sample))
                                .thenComparing(i -> columns.get(i).need())
                                .thenComparing(Comparator.reverseOrder()))
                .forEach(
                        i -> {
                            kept.remove(i);
                            choices.add(List.copyOf(kept));
                        });
        return choices;
    }

    private static boolean isEmpty(int column, List<List<String>> sample) {
        return sample.stream().allMatch(row -> row.get(column).isEmpty());
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
        IntStream.range(0, columns.size())
                .filter(i -> !kept.contains(i) && !cells.get(i).isEmpty())
                .forEach(missed::add);
        layout.row(pick(cells, kept));
    }

    /** Those that had something in them. */
    @Override
    public List<Column> leftOut() {
        return missed.stream().map(columns::get).toList();
    }
}
