package counterbench.job.rules;

import counterbench.campaign.Pack;
import counterbench.job.JobFacts;
import counterbench.job.JudgedJob;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * What the vehicle rules judge.
 *
 * @param pack the terms in force on the day of completion
 * @param hasList whether the campaign has a list of affected vehicles
 * @param isListed whether the job's vehicle is on it
 * @param attributes the vehicle's; none for one that is not listed
 * @param visits completed jobs of the campaign on the same vehicle at any site, in any order; this
 *     one and later ones may be among them
 */
public record VehicleFacts(
        JudgedJob judged,
        Pack pack,
        boolean hasList,
        boolean isListed,
        Map<String, String> attributes,
        List<Visit> visits)
        implements JobFacts {
    public VehicleFacts {
        Objects.requireNonNull(judged, "judged");
        Objects.requireNonNull(pack, "pack");
        attributes = Collections.unmodifiableMap(new TreeMap<>(attributes));
        visits = List.copyOf(visits);
    }
}
