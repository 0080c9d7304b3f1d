package counterbench.job.rules;

import counterbench.campaign.PackDraft;
import counterbench.job.JudgedJob;
import counterbench.job.TestJobs;
import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** One job's vehicle for tests: listed, of a campaign with a list, unless said otherwise. */
final class VehicleCase {
    private PackDraft pack = new PackDraft();
    private JudgedJob judged = TestJobs.completed();
    private boolean hasList = true;
    private boolean isListed = true;
    private Map<String, String> attributes = Map.of();
    private final List<Visit> visits = new ArrayList<>();

    VehicleCase pack(PackDraft draft) {
        pack = draft;
        return this;
    }

    VehicleCase on(JudgedJob job) {
        judged = job;
        return this;
    }

    VehicleCase list(boolean campaignHasOne, boolean vehicleIsOnIt) {
        hasList = campaignHasOne;
        isListed = vehicleIsOnIt;
        return this;
    }

    VehicleCase attributes(Map<String, String> answers) {
        attributes = answers;
        return this;
    }

    VehicleCase visit(String site, String job, String completedAt) {
        visits.add(new Visit(site, job, TestJobs.at(completedAt)));
        return this;
    }

    List<Finding> findings(Judge<VehicleFacts> judge) {
        Findings findings = new Findings();
        judge.judge(
                new VehicleFacts(judged, pack.pack(), hasList, isListed, attributes, visits),
                findings);
        return findings.found();
    }
}
