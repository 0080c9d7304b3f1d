package counterbench.campaign;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A {@code when}: attributes of the vehicle (or the job's outcome) and the answer that each must
 * have.
 *
 * @param answers attribute to answer, compared exactly; empty holds for every vehicle
 */
public record Condition(Map<String, String> answers) {
    /** Holds for every vehicle. */
    public static final Condition ALWAYS = new Condition(Map.of());

    public Condition {
        answers = java.util.Collections.unmodifiableMap(new TreeMap<>(answers));
    }

    /** Whether a condition can be told of a vehicle, and how. */
    public enum Holds {
        YES,
        NO,
        UNKNOWN
    }

    /**
     * Judges the condition on a vehicle's attributes. An attribute that the vehicle lacks makes it
     * unknown, whatever the others say.
     */
    public Holds on(Map<String, String> attributes) {
        Holds holds = Holds.YES;
        for (Map.Entry<String, String> wanted : answers.entrySet()) {
            String answer = attributes.get(wanted.getKey());
            if (answer == null) {
                return Holds.UNKNOWN;
            }
            if (!answer.equals(wanted.getValue())) {
                holds = Holds.NO;
            }
        }
        return holds;
    }

    /** What must hold, as people say it: {@code cab is sleeper and axles is 3}. */
    public String words() {
        return answers.entrySet().stream()
                .map(wanted -> wanted.getKey() + " is " + wanted.getValue())
                .collect(Collectors.joining(" and "));
    }

    @Override
    public String toString() {
        return answers.toString();
    }
}
