package counterbench.review;

import counterbench.judgement.Finding;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What has been settled, and with it which findings are open. */
public final class Settlements {
    private static final Comparator<Settlement> IN_TIME =
            Comparator.comparing(Settlement::at).thenComparing(Settlement::address);

    private final Map<FindingId, Settlement> latest = new HashMap<>();

    /**
     * @param settlements those that were known and given by the moment of the review; what was
     *     taken back counts for nothing
     */
    public Settlements(Collection<Settlement> settlements) {
        settlements.stream()
                .filter(settlement -> !settlement.takenBack())
                .sorted(IN_TIME)
                .forEach(settlement -> latest.put(settlement.finding(), settlement));
    }

    /** The last word on a finding, if it is on the evidence that the finding has now. */
    public Optional<Settlement> of(Finding finding) {
        return Optional.ofNullable(latest.get(FindingId.of(finding)))
                .filter(settlement -> settlement.isOnTheEvidenceOf(finding));
    }

    /** Findings with their states, in the order of subjects. */
    public List<StatedFinding> state(Collection<Finding> findings) {
        return findings.stream().map(this::stated).sorted(StatedFinding.BY_SUBJECT).toList();
    }

    /** A finding with its state. */
    public StatedFinding stated(Finding finding) {
        FindingState state = of(finding).isPresent() ? FindingState.SETTLED : FindingState.OPEN;
        return new StatedFinding(FindingId.of(finding), finding, state);
    }
}
