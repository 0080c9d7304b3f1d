package counterbench.stock;

import counterbench.campaign.KitTerms;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;

/**
 * The kits of a component of which something is known, wherever they were received.
 *
 * @param kits by serial
 * @param contents what they hold, by serial, where a pack says so
 */
public record KnownKits(Map<String, Kit> kits, Map<String, KitTerms> contents) {
    public KnownKits {
        kits = Map.copyOf(kits);
        contents = Map.copyOf(contents);
    }

    /** Those of a component: received at its site, or arrived there from another. */
    public static KnownKits of(LedgerFacts facts) {
        Map<String, Kit> kits = new HashMap<>();
        Map<String, KitTerms> contents = new HashMap<>();
        facts.arriving().forEach(received -> put(received, kits, contents));
        facts.kits().forEach(received -> put(received, kits, contents));
        return new KnownKits(kits, contents);
    }

    private static void put(
            ReceivedKit received, Map<String, Kit> kits, Map<String, KitTerms> contents) {
        kits.put(received.kit().kit(), received.kit());
        if (received.terms() != null) {
            contents.put(received.kit().kit(), received.terms());
        }
    }

    /** Which of the kits issued to a job its uses come from. */
    public SourceOfUse sourceOf(Collection<String> issued) {
        return new SourceOfUse(issued, kits, contents);
    }
}
