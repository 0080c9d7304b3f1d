package counterbench.facts;

import java.util.Collections;

/** Rows for tests: start from an empty one and fill in what matters. */
public final class TestRows {
    private TestRows() {}

    /** A row that says nothing yet. */
    public static FactRow row(FactKind kind) {
        return new FactRow(kind, Collections.nCopies(kind.columns().size(), null), null);
    }
}
