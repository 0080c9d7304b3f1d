package counterbench.journal;

import counterbench.shared.Site;
import java.time.Instant;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What is known of an entry before it is written.
 *
 * @param id made by the client, so that a retry finds what was already written
 * @param at the time at which it is recorded
 * @param person who records it
 * @param kind what kind of act
 * @param source the command, or the files, that it comes from
 * @param reverses the entry that it takes back, if it does
 */
public record Draft(
        Site site,
        UUID id,
        Instant at,
        String person,
        String kind,
        String source,
        @Nullable Long reverses) {
    /** Characters that a source may have; a longer one is cut. */
    public static final int SOURCE_LENGTH = 1_000;

    public Draft {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(person, "person");
        Objects.requireNonNull(kind, "kind");
        source = source.length() <= SOURCE_LENGTH ? source : source.substring(0, SOURCE_LENGTH);
    }

    /** A draft of an act that reverses nothing. */
    public static Draft of(Site site, Instant at, String person, String kind, String source) {
        return new Draft(site, UUID.randomUUID(), at, person, kind, source, null);
    }
}
