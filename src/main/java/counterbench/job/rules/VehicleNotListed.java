package counterbench.job.rules;

import counterbench.job.CompletedJobJudge;
import counterbench.judgement.Findings;
import counterbench.judgement.Rule;
import counterbench.shared.vin.Vin;

/** The campaign has a list of affected vehicles and the job's vehicle is not on it. */
public final class VehicleNotListed extends CompletedJobJudge<VehicleFacts> {
    public VehicleNotListed() {
        super(Rule.VEHICLE_NOT_LISTED);
    }

    @Override
    protected void judgeCompleted(VehicleFacts facts, Findings findings) {
        if (facts.hasList() && !facts.isListed()) {
            String vin = Vin.compared(facts.judged().job().vin());
            String message =
                    "vehicle %s is not on the list of campaign %s"
                            .formatted(vin, facts.judged().job().campaign());
            findings.add(facts.judged().finding(rule(), message, vin + " not listed"));
        }
    }
}
