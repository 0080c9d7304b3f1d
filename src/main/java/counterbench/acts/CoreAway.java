package counterbench.acts;

import counterbench.cores.Whereabouts;
import counterbench.cores.Whereabouts.Place;
import counterbench.shared.Site;
import java.util.Comparator;
import java.util.Objects;

/**
 * A core and where it is, which may be another yard than that of its own site.
 *
 * @param owner the site that removed it, which keeps its book
 */
public record CoreAway(Site owner, CoreCase core, Whereabouts where) {
    /** By tag, then by owner; total. */
    public static final Comparator<CoreAway> BY_TAG =
            Comparator.comparing(CoreAway::tag).thenComparing(away -> away.owner().site());

    public CoreAway {
        Objects.requireNonNull(owner, "owner");
        Objects.requireNonNull(core, "core");
        Objects.requireNonNull(where, "where");
    }

    /** Where a core of a site is by all that is told of it. */
    public static CoreAway of(Site owner, CoreCase core) {
        return new CoreAway(owner, core, core.where());
    }

    /** Whether it lies in another yard than its own, or is on the way between two. */
    public boolean isAway() {
        return !where.isGone() && !where.isIn(Place.IN_YARD, owner.site());
    }

    /** Its tag, which may be one of another site's core, too. */
    public String tag() {
        return core.core().core();
    }

    /** Whether it is another site's. */
    public boolean isStrangeTo(Site site) {
        return !owner.site().equals(site.site());
    }
}
