package counterbench.acts.bench;

import counterbench.acts.JobState;
import counterbench.campaign.PartUnit;
import counterbench.job.OnVehicle;
import counterbench.job.Requirement;
import counterbench.job.Requirements;
import counterbench.shared.Quantity;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How far one part has come onto a vehicle.
 *
 * @param fresh fitted new and still there
 * @param old refitted old and still there
 */
public record FitState(Requirement requirement, Quantity fresh, Quantity old) {
    /** Every part that a job's vehicle needs, or has, in the order of the pack. */
    public static List<FitState> of(JobState job, Instant now) {
        Optional<Requirements> requirements = job.requirements();
        if (requirements.isEmpty()) {
            return List.of();
        }
        Requirements all = requirements.get();
        Instant until = Optional.ofNullable(job.job().completedAt()).orElse(now);
        OnVehicle on = OnVehicle.at(until, job.file().uses(), all::packPart);
        return all.onVehicle().stream()
                .map(r -> new FitState(r, on.fittedNew(r.part()), on.refittedOld(r.part())))
                .filter(
                        s ->
                                s.requirement.required().isPositive()
                                        || !s.onVehicle().isZero()
                                        || s.requirement.isConditionUnknown())
                .toList();
    }

    /** What is on the vehicle, new and old. */
    public Quantity onVehicle() {
        return fresh.plus(old);
    }

    /** The least that must be on it. */
    public Quantity wanted() {
        return requirement.least();
    }

    /** What is still to fit. */
    public Quantity missing() {
        Quantity rest = wanted().minus(onVehicle());
        return rest.isPositive() && requirement.applies() ? rest : Quantity.ZERO;
    }

    /** Whether a part number is that of the part, or of one that it takes the place of. */
    public boolean isOf(String part) {
        return requirement.part().equals(part) || requirement.replaces().contains(part);
    }

    /** What is still to fit with its unit: {@code 2 HB-3013}, {@code 4.2 mL HB-3015}. */
    public String words() {
        return withUnit(missing()) + " " + requirement.part();
    }

    /** So much of it, with the unit of a measured part. */
    String withUnit(Quantity quantity) {
        PartUnit unit = requirement.unit();
        return quantity + (unit.isMeasured() && !quantity.isZero() ? " " + unit.word() : "");
    }

    /**
     * What a vehicle has of a part and needs: {@code , 2 of 4 on the vehicle}; empty where it needs
     * none.
     */
    public static String told(JobState job, Instant now, String part) {
        return of(job, now).stream()
                .filter(state -> state.isOf(part))
                .map(FitState::told)
                .findFirst()
                .orElse("");
    }

    private String told() {
        String of = requirement.unit().isMeasured() ? " of at least " : " of ";
        String wanted = requirement.applies() ? of + withUnit(wanted()) : "";
        return ", " + withUnit(onVehicle()) + wanted + " on the vehicle" + notAsked();
    }

    private String notAsked() {
        if (requirement.isConditionUnknown()) {
            return "; whether it needs any cannot be told";
        }
        return requirement.applies() ? "" : ", which needs none";
    }
}
