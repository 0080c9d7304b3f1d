package counterbench.acts;

import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Quantity;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Hands loose parts to a job.
 *
 * @param lot the lot; null for the one in date that expires first
 */
public record IssuePart(
        String part, Quantity quantity, String job, @Nullable String lot, Stamp stamp)
        implements Act {
    @Override
    public FactKind makes() {
        return FactKind.ISSUES;
    }

    @Override
    public Named named() {
        return Named.job(job).withPart(part);
    }

    @Override
    public Decision decide(Situation situation) {
        JobState to = situation.job(job);
        Parts parts = Parts.of(situation);
        parts.mustBeLoose(part);
        parts.mustBeSome(part, quantity);
        String asked = parts.words(part, quantity) + " to job " + job;
        to.mustBeOpen(asked);
        List<ShelfPick> picks =
                ShelfPick.forUse(
                        situation,
                        new ShelfPick.Wish(
                                asked, situation.shelf(part), quantity, lot, stamp.at()));
        return new Decision(picks.stream().map(this::row).toList(), remarks(situation, to, picks));
    }

    private FactRow row(ShelfPick pick) {
        return stamp.row(FactKind.ISSUES)
                .with("job", job)
                .with("part", part)
                .with("quantity", pick.quantity().amount())
                .with("lot", pick.lot());
    }

    private List<String> remarks(Situation situation, JobState to, List<ShelfPick> picks) {
        List<String> remarks = new ArrayList<>();
        boolean chosen = lot == null && picks.stream().anyMatch(pick -> pick.lot() != null);
        for (ShelfPick pick : picks) {
            if (chosen) {
                remarks.add("take " + pick.words());
            } else if (pick.isExpired(situation.site(), stamp.at())) {
                remarks.add("lot " + pick.lot() + " is past its last usable day, " + pick.until());
            }
        }
        if (to.pack().isPresent() && to.pack().get().line(part).isEmpty()) {
            remarks.add("campaign " + to.job().campaign() + " asks for no part " + part);
        }
        return remarks;
    }
}
