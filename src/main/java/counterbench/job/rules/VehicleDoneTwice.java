package counterbench.job.rules;

import counterbench.job.CompletedJobJudge;
import counterbench.job.JudgedJob;
import counterbench.judgement.Findings;
import counterbench.judgement.Rule;
import counterbench.shared.vin.Vin;
import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The vehicle was done before under the campaign, here or elsewhere, by a job that this one does
 * not name as the one it does again.
 */
public final class VehicleDoneTwice extends CompletedJobJudge<VehicleFacts> {
    public VehicleDoneTwice() {
        super(Rule.VEHICLE_DONE_TWICE);
    }

    @Override
    protected void judgeCompleted(VehicleFacts facts, Findings findings) {
        JudgedJob judged = facts.judged();
        judged.completion().ifPresent(at -> judge(facts, at, findings));
    }

    private void judge(VehicleFacts facts, Instant completedAt, Findings findings) {
        JudgedJob judged = facts.judged();
        Visit own = new Visit(judged.site().site(), judged.job().job(), completedAt);
        List<Visit> before =
                facts.visits().stream()
                        .filter(visit -> visit.compareTo(own) < 0)
                        .filter(visit -> !visit.job().equals(judged.job().redoOf()))
                        .sorted()
                        .toList();
        if (!before.isEmpty()) {
            String visits = before.stream().map(this::words).collect(Collectors.joining(", "));
            String vin = Vin.compared(judged.job().vin());
            String message = "vehicle %s was done before by %s".formatted(vin, visits);
            findings.add(judged.finding(rule(), message, vin + " done by " + visits));
        }
    }

    private String words(Visit visit) {
        return "job %s at %s".formatted(visit.job(), visit.site());
    }
}
