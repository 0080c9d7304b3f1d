package counterbench.review;

import counterbench.campaign.Pack;
import counterbench.job.Job;
import counterbench.job.JudgedJob;
import counterbench.job.rules.HardwareFacts;
import counterbench.job.rules.JobGoods;
import counterbench.job.rules.JobRules;
import counterbench.job.rules.PartLot;
import counterbench.job.rules.VehicleFacts;
import counterbench.job.rules.VehicleRules;
import counterbench.job.rules.Visit;
import counterbench.judgement.Findings;
import counterbench.procedure.rules.ProcedureFacts;
import counterbench.procedure.rules.ProcedureRules;
import counterbench.stock.Account;
import counterbench.stock.Issue;
import counterbench.stock.KnownKits;
import counterbench.stock.Ledger;
import counterbench.stock.Use;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Judges what was done on a job: its hardware, its steps and its vehicle. */
final class JudgeWork {
    private final JobCase jobCase;
    private final Component component;
    private final Ledger ledger;
    private final LikeVehicles like;

    JudgeWork(JobCase jobCase, Component component, Ledger ledger, LikeVehicles like) {
        this.like = like;
        this.jobCase = jobCase;
        this.component = component;
        this.ledger = ledger;
    }

    void judge(Findings findings) {
        jobCase.job().ifPresent(job -> judge(job, findings));
    }

    private void judge(Job job, Findings findings) {
        JudgedJob judged = new JudgedJob(jobCase.site(), job, jobCase.asOf());
        JudgeComponent.run(JobRules.OPEN, judged, findings);
        jobCase.pack().ifPresent(pack -> judge(judged, pack, findings));
    }

    private void judge(JudgedJob judged, Pack pack, Findings findings) {
        Map<String, String> attributes = jobCase.attributes();
        JobFile file = jobCase.file();
        JudgeComponent.run(JobRules.ALL, hardware(judged, pack), findings);
        JudgeComponent.run(
                ProcedureRules.ALL,
                new ProcedureFacts(
                        judged, pack, attributes, file.marks(), jobCase.terms().instruments()),
                findings);
        JudgeComponent.run(
                VehicleRules.ALL,
                new VehicleFacts(
                        judged,
                        pack,
                        jobCase.terms().listedCampaigns().contains(pack.campaign()),
                        file.vehicle() != null,
                        attributes,
                        visits()),
                findings);
    }

    private List<Visit> visits() {
        return jobCase.file().sameVehicle().stream()
                .map(v -> new Visit(v.site(), v.job(), v.completedAt()))
                .toList();
    }

    /** The hardware facts of the job, as the monthly account reads them, too. */
    HardwareFacts hardware(JudgedJob judged, Pack pack) {
        JobFile file = jobCase.file();
        KnownKits known = KnownKits.of(component.facts());
        JobGoods goods =
                new JobGoods(
                        file.issues(),
                        file.uses(),
                        known.kits(),
                        known.contents(),
                        lotExpiry(),
                        ledger.balance(Account.bench(file.name())),
                        jobCase.terms().partUnits());
        return new HardwareFacts(judged, like.requirements(pack, jobCase.attributes()), goods);
    }

    private Map<PartLot, LocalDate> lotExpiry() {
        Map<PartLot, LocalDate> expiry = new HashMap<>();
        for (Use use : jobCase.file().uses()) {
            addExpiry(use.part(), use.lot(), expiry);
        }
        for (Issue issue : jobCase.file().issues()) {
            if (issue.part() != null) {
                addExpiry(issue.part(), issue.lot(), expiry);
            }
        }
        return expiry;
    }

    private void addExpiry(String part, @Nullable String lot, Map<PartLot, LocalDate> expiry) {
        if (lot != null) {
            jobCase.terms()
                    .expiryOf(part, lot)
                    .ifPresent(day -> expiry.put(new PartLot(part, lot), day));
        }
    }
}
