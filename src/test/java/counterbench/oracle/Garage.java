package counterbench.oracle;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/** A written garage: where its paper lies, whose it is and as of when it is judged. */
public record Garage(Path sheets, List<Path> packs, OracleSite site, Instant asOf) {

    /** Judges it as of another instant. */
    public Oracle judge(Instant other) {
        return Oracle.read(sheets, packs, site, other);
    }

    /** Judges it. */
    public Oracle judge() {
        return Oracle.read(sheets, packs, site, asOf);
    }
}
