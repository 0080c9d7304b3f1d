package counterbench.journal;

import counterbench.facts.Canonical;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The chain: each entry's hash covers the hash before it. */
public final class Chain {
    /** What stands before the first entry: 64 zeros. */
    public static final String START = "0".repeat(64);

    private Chain() {}

    /** An entry with its hash, given the hash before it. */
    public static Entry link(
            String previousHash,
            int siteNo,
            String site,
            long number,
            UUID id,
            Instant recordedAt,
            String person,
            String kind,
            String source,
            @Nullable Long reverses,
            int factCount,
            String contentHash) {
        Instant cut = Canonical.cut(recordedAt);
        String text =
                String.join(
                        "\n",
                        previousHash,
                        site,
                        Long.toString(number),
                        id.toString(),
                        cut.toString(),
                        Canonical.normalised(person),
                        kind,
                        Canonical.normalised(source),
                        reverses == null ? "" : reverses.toString(),
                        Integer.toString(factCount),
                        contentHash);
        return new Entry(
                siteNo,
                number,
                id,
                cut,
                person,
                kind,
                source,
                reverses,
                factCount,
                contentHash,
                Sha256.hex(text));
    }
}
