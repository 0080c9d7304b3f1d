package counterbench.job.rules;

import counterbench.judgement.Judge;
import java.util.List;

/** All rules about a job's vehicle, in the order of explanation. */
public final class VehicleRules {
    /** Every judge. */
    public static final List<Judge<VehicleFacts>> ALL =
            List.of(
                    new ConditionUnknown(),
                    new VinInvalid(),
                    new VehicleNotListed(),
                    new VehicleDoneTwice());

    private VehicleRules() {}
}
