package counterbench.acts;

import java.util.Collection;

/** All names of a site that a mistyped one is held against. */
public interface Directory {
    /** Every job. */
    Collection<String> jobs();

    /** Every kit that was received or arrived. */
    Collection<String> kits();

    /** Every core tag. */
    Collection<String> cores();
}
