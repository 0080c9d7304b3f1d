package counterbench.facts;

import java.util.List;
import java.util.Optional;

/**
 * How a kind's rows are told apart and where they come from.
 *
 * @param key the headings by which a row is known; none for plain facts
 * @param time the heading of the time at which a plain fact happened
 * @param inSheets whether sheets may bring such rows; the others come from commands only
 */
record Nature(List<String> key, Optional<String> time, boolean inSheets) {
    Nature {
        key = List.copyOf(key);
    }

    static Nature keyed(String... headings) {
        return new Nature(List.of(headings), Optional.empty(), true);
    }

    static Nature facts(String time) {
        return new Nature(List.of(), Optional.of(time), true);
    }

    static Nature commands() {
        return new Nature(List.of(), Optional.empty(), false);
    }
}
