package counterbench.acts.rack;

import counterbench.acts.ShipmentState;
import counterbench.cores.Difference;
import counterbench.journal.Entry;
import counterbench.judgement.Finding;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * All there is to show of a shipment.
 *
 * @param sscc its number, where the site has a company prefix
 * @param opened each time that the lead let it go all the same
 * @param open open findings by core
 * @param differences between the return centre's sheet and ours
 * @param newest the newest entry of the site's journal
 */
public record ShipmentPage(
        Site site,
        ShipmentState state,
        @Nullable String sscc,
        List<Opened> opened,
        Map<String, List<Finding>> open,
        List<Difference> differences,
        @Nullable Entry newest) {
    public ShipmentPage {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(state, "state");
        opened = List.copyOf(opened);
        open = Map.copyOf(new TreeMap<>(open));
        differences = List.copyOf(differences);
    }

    /** The yard in which its cores lie, or from which they left, where that is another site's. */
    public Optional<String> otherYard() {
        return state.cores().stream()
                .map(core -> core.where().site())
                .filter(yard -> !yard.equals(site.site()))
                .findFirst();
    }

    /**
     * A gate that the lead opened.
     *
     * @param findings what stood against it
     */
    public record Opened(Instant at, String person, String reason, @Nullable String findings) {}
}
