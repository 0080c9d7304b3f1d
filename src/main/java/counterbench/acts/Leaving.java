package counterbench.acts;

import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import counterbench.stock.StockEvent;
import java.util.Collection;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How goods leave the shelf apart from jobs.
 *
 * @param kind sent, returned or scrapped
 * @param otherSite the site that they are sent to
 * @param document the paper's own number
 */
public record Leaving(
        StockEvent.Kind kind,
        @Nullable String otherSite,
        @Nullable String document,
        @Nullable String reason) {
    public Leaving {
        Objects.requireNonNull(kind, "kind");
        if ((kind == StockEvent.Kind.SENT) != (otherSite != null)) {
            throw new IllegalArgumentException(
                    "what is sent goes to a site, and nothing else does");
        }
    }

    /** To another site. */
    public static Leaving to(String otherSite, @Nullable String document) {
        return new Leaving(StockEvent.Kind.SENT, otherSite, document, null);
    }

    /** A row of it that does not say yet what leaves. */
    FactRow row(Stamp stamp) {
        return stamp.row(FactKind.MOVES)
                .with("event", kind.word())
                .with("other_site", otherSite)
                .with("document", document)
                .with("reason", reason);
    }

    /** What happens to the goods, after their name. */
    String words() {
        return switch (kind) {
            case SENT -> "to site " + otherSite;
            case RETURNED -> "back to the supplier";
            default -> "into the scrap";
        };
    }

    /** Refuses a site that the store does not have, and the site itself. */
    void mustHaveDestination(Situation situation) {
        if (otherSite != null) {
            mustBeOther(situation, otherSite);
        }
    }

    /** Refuses a site that is none of the other ones in the store. */
    static void mustBeOther(Situation situation, String site) {
        Collection<String> others = situation.directory().otherSites();
        if (others.contains(site)) {
            return;
        }
        boolean here = situation.site().site().equals(site);
        throw new Refused(
                "site \"" + site + "\"",
                here ? "that is this site" : "the store has no such site",
                NearMatch.of(site, others)
                        .filter(near -> !here)
                        .map(near -> "did you mean " + near + "?")
                        .orElse(
                                others.isEmpty()
                                        ? "set the other site up first: setup"
                                        : "the others are " + String.join(", ", others)));
    }
}
