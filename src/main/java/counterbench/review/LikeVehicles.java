package counterbench.review;

import counterbench.campaign.Pack;
import counterbench.job.Requirements;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What packs require, kept from one job to the next on a like vehicle: thousands of jobs have few
 * kinds of vehicles. May be asked from several threads.
 */
final class LikeVehicles {
    private static final int MOST = 1_000;

    private final Map<Kind, Requirements> requirements = new ConcurrentHashMap<>();

    private record Kind(String campaign, String revision, Map<String, String> attributes) {}

    /** What a pack, of which there is one a campaign and revision, requires on such a vehicle. */
    Requirements requirements(Pack pack, Map<String, String> attributes) {
        if (requirements.size() >= MOST) {
            requirements.clear();
        }
        return requirements.computeIfAbsent(
                new Kind(pack.campaign(), pack.revision(), attributes),
                kind -> Requirements.of(pack, attributes));
    }
}
