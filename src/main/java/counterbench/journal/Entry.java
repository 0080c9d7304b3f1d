package counterbench.journal;

import java.time.Instant;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One entry of a site's journal: one act, or one import.
 *
 * @param number its place, from 1 without gaps
 * @param id made by the client before it first tries, so that a retry finds what was already
 *     written
 * @param recordedAt when it was recorded, cut to microseconds
 * @param person who recorded it
 * @param kind what kind of act, such as {@code import}
 * @param source the command, or the files, that it came from
 * @param reverses the number of the entry that it takes back, if it does
 * @param factCount how many facts it holds
 * @param contentHash the hash over its facts
 * @param hash the hash over the previous entry's hash and all of the above
 */
public record Entry(
        int siteNo,
        long number,
        UUID id,
        Instant recordedAt,
        String person,
        String kind,
        String source,
        @Nullable Long reverses,
        int factCount,
        String contentHash,
        String hash) {
    public Entry {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(recordedAt, "recordedAt");
        Objects.requireNonNull(person, "person");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(contentHash, "contentHash");
        Objects.requireNonNull(hash, "hash");
    }
}
