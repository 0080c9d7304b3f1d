package counterbench.acts;

import counterbench.claims.draft.Rate;
import counterbench.cores.Acknowledgement;
import counterbench.review.Settlements;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** What a site has besides what an act names; asked only where it matters. */
public interface Directory {
    /** Every job. */
    Collection<String> jobs();

    /** Every kit that was received or arrived. */
    Collection<String> kits();

    /** Every core tag. */
    Collection<String> cores();

    /** The other sites of the store. */
    Collection<String> otherSites();

    /** The kits of a part that are on the shelf, first to expire first. */
    List<KitListing> kitsOnShelf(String kitPart);

    /** Every shipment. */
    Collection<String> shipments();

    /** What was written down of a shipment; empty where there is none of that name. */
    Optional<Shipment> shipment(String shipment);

    /** What the return centre said of a shipment so far, row by row. */
    List<Acknowledgement> acknowledgements(String shipment);

    /** Every claim. */
    Collection<String> claims();

    /** What an hour of labour costs, and since when. */
    List<Rate> rates();

    /** What one of a loose part cost at another site, by the last receipt of it there by a time. */
    Optional<BigDecimal> costElsewhere(String part, Instant by);

    /** Lines of remittances that were matched. */
    Collection<String> matchedCredits();

    /** What people have settled. */
    Settlements settlements();

    /** What other sites sent here and has not arrived. */
    UnderWay underWay();

    /** Cores of all sites that are not in the yard of their own, and have not left. */
    Collection<CoreAway> coresAway();
}
