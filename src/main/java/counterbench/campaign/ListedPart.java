package counterbench.campaign;

import java.util.Objects;

/**
 * What a site's list of parts states of a part.
 *
 * @param site the site's short name
 */
public record ListedPart(String site, String part, PartUnit unit) {
    public ListedPart {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(unit, "unit");
    }
}
