package counterbench.acts.scan;

import counterbench.journal.Sha256;
import java.nio.charset.StandardCharsets;
import java.util.UUID;

/**
 * Identifies each line of a batch by the site, the job and all lines up to it. So the same batch
 * that comes once more, or has grown at its end since, names the entries that its lines made the
 * first time.
 */
public final class BatchLines {
    private String chain;
    private int number;

    public BatchLines(String site, String job) {
        this.chain = Sha256.hex("batch\n" + site + "\n" + job);
    }

    /** Takes the next line in. */
    public void next(String line) {
        chain = Sha256.hex(chain + "\n" + line);
        number++;
    }

    /** The number of the line, from 1. */
    public int number() {
        return number;
    }

    /** The identifier of the entry that the line makes. */
    public UUID entry() {
        return UUID.nameUUIDFromBytes(chain.getBytes(StandardCharsets.UTF_8));
    }
}
