package counterbench.spool;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Rows that come in any order and are handed over by their keys. A few thousand are held in memory;
 * what is more lies sorted in temporary files until it is asked for.
 */
public final class SpooledRows implements Closeable {
    private static final int HELD = 5_000;
    private static final int MOST_RUNS = 200;

    private final int mostHeld;
    private final List<SpooledRow> held = new ArrayList<>();
    private final List<Path> runs = new ArrayList<>();
    private long count;

    public SpooledRows() {
        this(HELD);
    }

    /** Rows of which no more than that are held in memory. */
    SpooledRows(int mostHeld) {
        this.mostHeld = mostHeld;
    }

    /**
     * Adds a row. Rows of equal keys stay in the order in which they come.
     *
     * @param key texts, numbers, days and instants, by which rows are sorted one after the other
     */
    public void add(List<?> key, Map<String, ? extends @Nullable Object> row) {
        held.add(new SpooledRow(SortKey.of(key), count++, row));
        if (held.size() >= mostHeld) {
            spill(sorted());
            held.clear();
        }
    }

    private List<SpooledRow> sorted() {
        held.sort(Comparator.naturalOrder());
        return held;
    }

    private void spill(Iterable<SpooledRow> rows) {
        try {
            Path run = TemporaryFiles.create(".rows");
            runs.add(run);
            try (SpoolWriter out = new SpoolWriter(run)) {
                for (SpooledRow row : rows) {
                    out.write(row);
                }
            }
            if (runs.size() >= MOST_RUNS) {
                joinRuns();
            }
        } catch (IOException e) {
            throw TemporaryFiles.unusable(e);
        }
    }

    /** Many runs become one, so that few files are open at a time. */
    private void joinRuns() throws IOException {
        List<Path> before = List.copyOf(runs);
        Path joined = TemporaryFiles.create(".rows");
        runs.add(joined);
        try (SpoolWriter out = new SpoolWriter(joined)) {
            merge(before, List.of(), out::write);
        }
        before.forEach(TemporaryFiles::remove);
        runs.retainAll(List.of(joined));
    }

    /** Hands every row over, in the order of keys. */
    public void each(Consumer<Map<String, ? extends @Nullable Object>> taker) {
        try {
            merge(runs, sorted(), row -> taker.accept(row.values()));
        } catch (IOException e) {
            throw TemporaryFiles.unusable(e);
        }
    }

    private static void merge(List<Path> runs, List<SpooledRow> held, Consumer<SpooledRow> taker)
            throws IOException {
        List<SpoolReader> open = new ArrayList<>();
        try {
            PriorityQueue<SpoolReader> next =
                    new PriorityQueue<>(Comparator.comparing(SpoolReader::row));
            for (Path run : runs) {
                SpoolReader reader = SpoolReader.of(run);
                open.add(reader);
                next.add(reader);
            }
            if (!held.isEmpty()) {
                next.add(SpoolReader.of(held.iterator()));
            }
            while (!next.isEmpty()) {
                SpoolReader first = next.remove();
                taker.accept(first.row());
                if (first.advance()) {
                    next.add(first);
                }
            }
        } finally {
            for (SpoolReader reader : open) {
                reader.close();
            }
        }
    }

    /** Removes the temporary files. */
    @Override
    public void close() {
        runs.forEach(TemporaryFiles::remove);
        runs.clear();
        held.clear();
    }
}
