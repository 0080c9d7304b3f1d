package counterbench.month.sheet;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A row in the making. What is null is left out. */
final class RowOf {
    private final Map<String, @Nullable Object> values = new LinkedHashMap<>();

    RowOf with(String field, @Nullable Object value) {
        if (value != null) {
            values.put(field, value);
        }
        return this;
    }

    /** A part with its name and unit. */
    RowOf part(@Nullable String part, PartNames names) {
        return part == null
                ? this
                : with("part", part).with("name", names.name(part)).with("unit", names.unit(part));
    }

    Map<String, @Nullable Object> values() {
        return values;
    }
}
