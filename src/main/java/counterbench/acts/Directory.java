package counterbench.acts;

import counterbench.review.Settlements;
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

    /** What people have settled. */
    Settlements settlements();

    /** What other sites sent here and has not arrived. */
    UnderWay underWay();
}
