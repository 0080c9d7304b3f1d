package counterbench.acts;

import java.util.Collection;
import java.util.List;

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

    /** What other sites sent here and has not arrived. */
    UnderWay underWay();
}
