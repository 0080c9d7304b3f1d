package counterbench.procedure.rules;

import counterbench.campaign.Step;
import counterbench.job.CompletedJobJudge;
import counterbench.judgement.Findings;
import counterbench.judgement.Rule;
import java.util.Optional;

/**
 * A rule about each applicable step of a completed job. Steps that do not apply, or of which it
 * cannot be told, are not judged by it.
 */
abstract class StepJudge extends CompletedJobJudge<ProcedureFacts> {
    StepJudge(Rule rule) {
        super(rule);
    }

    /**
     * What is wrong with a step.
     *
     * @param message for a person, without the step's name
     * @param evidence the same in stable words
     */
    record Fault(String message, String evidence) {
        Fault(String words) {
            this(words, words);
        }
    }

    @Override
    protected final void judgeCompleted(ProcedureFacts facts, Findings findings) {
        for (Step step : facts.applicable()) {
            judge(facts, step, facts.marksOf(step.id()))
                    .ifPresent(fault -> find(facts, step.id(), fault, findings));
        }
    }

    private void find(ProcedureFacts facts, String step, Fault fault, Findings findings) {
        String message = "step " + step + ": " + fault.message();
        findings.add(facts.judged().findingOnStep(rule(), step, message, fault.evidence()));
    }

    /** Judges one step; empty if nothing is wrong. */
    abstract Optional<Fault> judge(ProcedureFacts facts, Step step, StepMarks marks);
}
