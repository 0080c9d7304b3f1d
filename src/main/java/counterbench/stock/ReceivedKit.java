package counterbench.stock;

import counterbench.campaign.KitLine;
import counterbench.campaign.KitTerms;
import counterbench.shared.Quantity;
import java.util.Collections;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A kit as it was received, with the terms that say what it holds.
 *
 * @param terms the contents by the pack; null where no pack knows the kit's part
 */
public record ReceivedKit(Kit kit, @Nullable KitTerms terms) {
    public ReceivedKit {
        Objects.requireNonNull(kit, "kit");
    }

    /** What it came with: each content less what was missing; nothing where no pack knows it. */
    public SortedMap<String, Quantity> contents() {
        SortedMap<String, Quantity> contents = new TreeMap<>();
        if (terms != null) {
            for (KitLine line : terms.contents()) {
                contents.merge(line.part(), line.quantity(), Quantity::plus);
            }
        }
        contents.replaceAll((part, whole) -> whole.minus(kit.missingOf(part).min(whole)));
        contents.values().removeIf(Quantity::isZero);
        return Collections.unmodifiableSortedMap(contents);
    }

    /** Whether it came with some of that part. */
    public boolean holds(String part) {
        return contents().containsKey(part);
    }
}
