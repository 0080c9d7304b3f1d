package counterbench.acts.bench;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.JobState;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Opens a job: a vehicle has come for a campaign.
 *
 * @param job the job's name
 * @param vin the vehicle, as it is written on it
 */
public record OpenJob(String job, String campaign, String vin, Details details, Stamp stamp)
        implements Act {
    /**
     * What else is known of the visit; each null where it is not.
     *
     * @param workOrder the workshop's own number for it
     * @param technician who works on it
     * @param redoOf the earlier job that it does again
     * @param mileage what the vehicle shows
     */
    public record Details(
            @Nullable String workOrder,
            @Nullable String technician,
            @Nullable String redoOf,
            @Nullable Long mileage) {}

    @Override
    public FactKind makes() {
        return FactKind.JOBS;
    }

    @Override
    public Named named() {
        return Named.job(job);
    }

    @Override
    public Decision decide(Situation situation) {
        situation.findJob(job).ifPresent(known -> refuseKnown(situation, known));
        refuseUnlessLoaded(situation.terms().packs().campaigns());
        FactRow row =
                FactRow.of(FactKind.JOBS)
                        .with("job", job)
                        .with("campaign", campaign)
                        .with("vin", vin)
                        .with("opened_at", stamp.at())
                        .with("work_order", details.workOrder())
                        .with("technician", details.technician())
                        .with("redo_of", details.redoOf())
                        .with("mileage", details.mileage());
        return Decision.of(row);
    }

    private void refuseKnown(Situation situation, JobState known) {
        throw new Refused(
                "job \"" + job + "\"",
                "it was opened at "
                        + situation.site().wallTime(known.job().openedAt())
                        + " for vehicle "
                        + known.job().vin(),
                wayOut(known));
    }

    private String wayOut(JobState known) {
        if (!known.job().isOpen()) {
            return "give this visit a name of its own";
        }
        return known.job().vin().equals(vin)
                ? "go on with it: job show " + job
                : "give this visit a name of its own; if that vehicle was a slip of the hand, take"
                        + " the opening back: reverse ENTRY (journal show has it)";
    }

    private void refuseUnlessLoaded(Set<String> campaigns) {
        if (!campaigns.contains(campaign)) {
            throw new Refused(
                    "campaign \"" + campaign + "\" of job " + job,
                    "no loaded pack has it",
                    NearMatch.of(campaign, campaigns)
                            .map(near -> "did you mean " + near + "?")
                            .orElse("load its pack first: campaign load FILE"));
        }
    }
}
