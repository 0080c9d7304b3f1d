package counterbench.procedure.rules;

import counterbench.campaign.Condition.Holds;
import counterbench.campaign.Step;
import counterbench.job.CompletedJobJudge;
import counterbench.judgement.Findings;
import counterbench.judgement.Rule;

/** A step was marked whose condition does not hold for the vehicle. */
public final class StepNotForVehicle extends CompletedJobJudge<ProcedureFacts> {
    public StepNotForVehicle() {
        super(Rule.STEP_NOT_FOR_VEHICLE);
    }

    @Override
    protected void judgeCompleted(ProcedureFacts facts, Findings findings) {
        for (Step step : facts.steps(Holds.NO)) {
            if (!facts.marksOf(step.id()).all().isEmpty()) {
                String evidence = "only where " + step.when().words();
                String message =
                        "step %s: marked, but it is not for this vehicle (%s)"
                                .formatted(step.id(), evidence);
                findings.add(facts.judged().findingOnStep(rule(), step.id(), message, evidence));
            }
        }
    }
}
