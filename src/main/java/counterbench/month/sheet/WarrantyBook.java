package counterbench.month.sheet;

import counterbench.claims.Credit;
import counterbench.claims.CreditFacts;
import counterbench.cores.CoreHistory;
import counterbench.job.Job;
import counterbench.judgement.Finding;
import counterbench.judgement.SubjectKind;
import counterbench.review.Component;
import counterbench.review.JobCase;
import counterbench.review.JobFile;
import counterbench.review.JudgedComponent;
import counterbench.review.Settlement;
import counterbench.review.Terms;
import counterbench.shared.Address;
import counterbench.sheets.report.ReportRows;
import counterbench.spool.SpooledRows;
import counterbench.stock.Count;
import counterbench.stock.JobEnd;
import counterbench.stock.LedgerFacts;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Gathers the rows of the monthly warranty workbook. */
public final class WarrantyBook implements Book {
    private final SiteMonth period;
    private final Terms terms;
    private final Instant asOf;
    private final SpooledRows claimRows = new SpooledRows();
    private final SpooledRows jobRows = new SpooledRows();
    private final SpooledRows evidenceRows = new SpooledRows();
    private final SpooledRows coreRows = new SpooledRows();
    private final SpooledRows creditRows = new SpooledRows();
    private final SpooledRows findingRows = new SpooledRows();
    private final OpenFindings open = new OpenFindings();
    private final ClaimsSheet claims;
    private final JobsSheet jobs;
    private final EvidenceSheet evidence;
    private final CoresSheet cores;
    private final CreditsSheet credits;
    private final FindingsSheet findings;

    /**
     * @param asOf as of when the site is read
     */
    public WarrantyBook(SiteMonth period, Terms terms, Instant asOf) {
        this.period = period;
        this.terms = terms;
        this.asOf = asOf;
        claims = new ClaimsSheet(period, asOf, claimRows);
        jobs = new JobsSheet(period, open, jobRows);
        evidence = new EvidenceSheet(period, evidenceRows);
        cores = new CoresSheet(period, coreRows);
        credits = new CreditsSheet(period, creditRows);
        findings = new FindingsSheet(WarrantyBook::isOfWarranty, findingRows);
    }

    private static boolean isOfWarranty(Finding finding) {
        SubjectKind about = finding.subject().kind();
        return about != SubjectKind.KIT && about != SubjectKind.ACCOUNT;
    }

    @Override
    public void add(Finding finding, @Nullable Settlement settled, boolean counts) {
        if (settled == null) {
            open.add(finding);
        }
        if (counts) {
            findings.add(finding, settled);
        }
    }

    @Override
    public void addOfNoClaim(CreditFacts credit) {
        credits.addOfNoClaim(credit);
    }

    @Override
    public void add(JudgedComponent judged) {
        Component component = judged.component();
        component.jobs().forEach(file -> add(file, completion(file, component)));
        open.clear();
    }

    private static @Nullable Address completion(JobFile file, Component component) {
        return component.facts().ends().stream()
                .filter(end -> end.job().equals(file.name()))
                .map(JobEnd::address)
                .findFirst()
                .orElse(null);
    }

    private void add(JobFile file, @Nullable Address completion) {
        JobCase jobCase = new JobCase(period.site(), terms, asOf, file);
        List<CoreHistory> removed = jobCase.cores();
        claims.add(file);
        credits.addOfClaims(file);
        removed.forEach(core -> cores.add(core, jobCase, creditsOf(core, jobCase)));
        cores.addMissing(jobCase, removed);
        @Nullable Job job = file.job();
        @Nullable Instant completedAt = job == null ? null : job.completedAt();
        if (job != null
                && completedAt != null
                && job.isCompleted()
                && period.books(completedAt, completion)) {
            jobs.add(job, completedAt, jobCase, removed);
            evidence.add(job, completedAt, jobCase, removed);
        }
    }

    /** Core credits for the core, with or without a claim. */
    private List<Credit> creditsOf(CoreHistory core, JobCase jobCase) {
        List<Credit> all = new ArrayList<>(credits.takeOfCore(core.core(), jobCase.file().name()));
        all.removeIf(c -> c.kind() != Credit.Kind.CORE);
        all.addAll(jobCase.coreCredits(core));
        return all;
    }

    @Override
    public void end(LedgerFacts storeOnly, Collection<Count> looseCounts) {
        credits.end();
    }

    @Override
    public Map<String, ReportRows> rows() {
        return Map.of(
                "Claims", claimRows::each,
                "Jobs", jobRows::each,
                "Evidence", evidenceRows::each,
                "Cores", coreRows::each,
                "Credits", creditRows::each,
                "Findings", findingRows::each);
    }

    @Override
    public void close() {
        List.of(claimRows, jobRows, evidenceRows, coreRows, creditRows, findingRows)
                .forEach(SpooledRows::close);
    }
}
