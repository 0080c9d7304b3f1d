package counterbench.labels;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Gathers the lines of a label, leaving out what is not known. */
final class LabelLines {
    private final List<String> lines = new ArrayList<>();

    LabelLines add(String what, @Nullable Object value) {
        if (value != null) {
            lines.add(what + " " + value);
        }
        return this;
    }

    LabelLines addAlone(@Nullable String line) {
        if (line != null) {
            lines.add(line);
        }
        return this;
    }

    List<String> all() {
        return List.copyOf(lines);
    }
}
