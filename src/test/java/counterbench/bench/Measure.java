package counterbench.bench;

import java.util.concurrent.Callable;

/** Prints how long a piece of work takes, how many rows a second, and the peak of the heap. */
final class Measure {
    private static final double SECOND = 1e9;

    private Measure() {}

    static void printHeadings() {
        System.out.printf(
                "%9s  %-28s %9s %9s %12s %9s%n",
                "jobs", "part", "rows", "seconds", "rows/second", "heap MB");
    }

    static void print(int jobs, String part, long rows, Callable<Long> work) throws Exception {
        try (HeapPeak heap = new HeapPeak()) {
            long began = System.nanoTime();
            work.call();
            double seconds = (System.nanoTime() - began) / SECOND;
            System.out.printf(
                    "%,9d  %-28s %,9d %9.2f %,12.0f %,9d%n",
                    jobs, part, rows, seconds, rows / seconds, heap.megabytes());
        }
    }
}
