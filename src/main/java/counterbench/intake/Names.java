package counterbench.intake;

import counterbench.campaign.Pack;
import counterbench.campaign.PartUnit;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/** What rows may name: what the store holds and what the same import brings. */
public interface Names {
    /** The revisions of a campaign; empty where no loaded pack names it. */
    List<Pack> revisions(String campaign);

    /** The revisions of packs that have a kit; empty where no loaded pack has it. */
    SortedSet<String> revisionsOfKit(String kitPart);

    /** Whether a pack or the list of parts names the part. */
    boolean isPart(String part);

    /** Whether a known part is counted in pieces; the others are measured. */
    boolean isCounted(String part);

    /** The unit in which loaded packs have a part; empty where no kit's contents name it. */
    Optional<PartUnit> packedUnit(String part);

    /** Whether the list of people names the person. */
    boolean isPerson(String name);

    /** The campaign of a job; empty where there is no such job. */
    Optional<String> campaignOf(String job);

    /** The job that a core was removed on; empty where it never was. */
    Optional<String> jobOfCore(String core);

    /** How many cores were removed on a job. */
    int coresOf(String job);

    /** Whether there is a job of that name, at any site. */
    boolean isJobAnywhere(String job);

    /** The time zone of the site whose paper it is. */
    ZoneId zone();

    /** The currency of the site whose paper it is. */
    String currency();
}
