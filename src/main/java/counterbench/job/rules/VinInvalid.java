package counterbench.job.rules;

import counterbench.job.CompletedJobJudge;
import counterbench.judgement.Findings;
import counterbench.judgement.Rule;
import counterbench.shared.vin.Vin;
import counterbench.shared.vin.VinFault;
import java.util.stream.Collectors;

/**
 * The job's VIN cannot be right: its length, a character or, unless the pack says no, its check
 * digit. Letter case and spaces do not count.
 */
public final class VinInvalid extends CompletedJobJudge<VehicleFacts> {
    public VinInvalid() {
        super(Rule.VIN_INVALID);
    }

    @Override
    protected void judgeCompleted(VehicleFacts facts, Findings findings) {
        String vin = facts.judged().job().vin();
        String faults =
                Vin.faults(vin, facts.pack().vinCheckDigit()).stream()
                        .map(VinFault::because)
                        .collect(Collectors.joining("; "));
        if (!faults.isEmpty()) {
            String message = "VIN \"" + vin + "\" cannot be right: " + faults;
            String evidence = Vin.compared(vin) + ": " + faults;
            findings.add(facts.judged().finding(rule(), message, evidence));
        }
    }
}
