package counterbench.campaign;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds steps that wait for each other in a circle, so that none could ever be first. */
public final class Cycles {
    private Cycles() {}

    /**
     * The circles among steps, each as the steps along it with the first repeated at the end; every
     * step in at most one. Names that are no step count for nothing.
     *
     * @param after each step and those that it comes after
     */
    public static List<List<String>> of(Map<String, List<String>> after) {
        Map<String, List<String>> left = new LinkedHashMap<>(after);
        List<List<String>> cycles = new ArrayList<>();
        for (removeFree(left); !left.isEmpty(); removeFree(left)) {
            List<String> cycle = cycleIn(left);
            cycles.add(cycle);
            left.keySet().removeAll(cycle);
        }
        return List.copyOf(cycles);
    }

    /** Takes out, again and again, the steps that wait for none of those left. */
    private static void removeFree(Map<String, List<String>> left) {
        boolean removed = true;
        while (removed) {
            removed = left.values().removeIf(waits -> waits.stream().noneMatch(left::containsKey));
        }
    }

    /** Every step left waits for another, so walking on must come back to a step walked already. */
    private static List<String> cycleIn(Map<String, List<String>> left) {
        List<String> walked = new ArrayList<>();
        String at = left.keySet().iterator().next();
        while (!walked.contains(at)) {
            walked.add(at);
            at = next(left, at).orElseThrow();
        }
        walked.add(at);
        return List.copyOf(walked.subList(walked.indexOf(at), walked.size()));
    }

    private static Optional<String> next(Map<String, List<String>> left, String at) {
        return left.getOrDefault(at, List.of()).stream().filter(left::containsKey).findFirst();
    }
}
