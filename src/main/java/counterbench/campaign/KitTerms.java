package counterbench.campaign;

import java.util.List;
import java.util.Objects;

/**
 * A kit that a job of the campaign needs.
 *
 * @param part the kit's own part number
 * @param quantity how many a job needs
 * @param when for which vehicles
 * @param contents what one kit holds
 */
public record KitTerms(String part, int quantity, Condition when, List<KitLine> contents) {
    public KitTerms {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(when, "when");
        contents = List.copyOf(contents);
    }
}
