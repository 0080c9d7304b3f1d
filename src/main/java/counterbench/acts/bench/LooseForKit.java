package counterbench.acts.bench;

import counterbench.acts.JobState;
import counterbench.job.Requirement;
import counterbench.stock.KnownKits;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What only a person can see where a loose part is fitted in the place of one that a kit of the job
 * came with, and gave away: a row without a kit is judged as of that kit.
 */
final class LooseForKit {
    private final Workplace place;
    private final String part;

    LooseForKit(Workplace place, String part) {
        this.place = place;
        this.part = part;
    }

    List<String> remarks(List<BenchPick> picks) {
        Optional<String> kit = judgedAs();
        List<String> remarks = new ArrayList<>();
        for (BenchPick pick : picks) {
            if (pick.kit() == null && kit.isPresent()) {
                remark(pick.lot(), kit.get(), remarks);
            }
        }
        return remarks;
    }

    private void remark(@Nullable String lot, String kit, List<String> remarks) {
        String unjudged = "; the review does not say so, since kit " + kit + " came with one";
        Optional<LocalDate> until =
                Optional.ofNullable(lot)
                        .flatMap(known -> place.situation().terms().expiryOf(part, known))
                        .filter(day -> day.isBefore(place.site().dayOf(place.stamp().at())));
        until.ifPresent(
                day ->
                        remarks.add(
                                "lot " + lot + " is past its last usable day, " + day + unjudged));
        if (isMatched()) {
            remarks.add(part + " belongs to the other parts of its kit, but is loose" + unjudged);
        }
    }

    private boolean isMatched() {
        return place.job()
                .requirements()
                .flatMap(requirements -> requirements.of(part))
                .filter(Requirement::matched)
                .isPresent();
    }

    /** The one kit of the job that held the part when it came, as the rules see it. */
    private Optional<String> judgedAs() {
        JobState job = place.job();
        return KnownKits.of(job.component().facts()).sourceOf(job.kits()).onlyKitWith(part);
    }
}
