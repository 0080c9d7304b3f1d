package counterbench.month.sheet;

import counterbench.claims.Claim;
import counterbench.cores.CoreHistory;
import counterbench.judgement.Finding;
import counterbench.judgement.Severity;
import counterbench.judgement.SubjectKind;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How many open findings there are about each job, core and claim of a component. */
final class OpenFindings {
    private final Map<SubjectKind, Map<String, Sums>> bySubject = new EnumMap<>(SubjectKind.class);

    /** How many there are of each severity. */
    static final class Sums {
        private final Map<Severity, Integer> bySeverity = new EnumMap<>(Severity.class);

        private void add(Severity severity, int count) {
            bySeverity.merge(severity, count, Integer::sum);
        }

        private void add(Sums other) {
            other.bySeverity.forEach(this::add);
        }

        int of(Severity severity) {
            return bySeverity.getOrDefault(severity, 0);
        }
    }

    void add(Finding finding) {
        bySubject
                .computeIfAbsent(finding.subject().kind(), k -> new HashMap<>())
                .computeIfAbsent(finding.subject().name(), n -> new Sums())
                .add(finding.rule().severity(), 1);
    }

    /** Forgets all, before those of other jobs come. */
    void clear() {
        bySubject.clear();
    }

    /** About a job, its cores and its claims together. */
    Sums of(String job, List<CoreHistory> cores, List<Claim> claims) {
        Sums sums = new Sums();
        add(SubjectKind.JOB, job, sums);
        cores.forEach(core -> add(SubjectKind.CORE, core.core(), sums));
        claims.forEach(claim -> add(SubjectKind.CLAIM, claim.claim(), sums));
        return sums;
    }

    private void add(SubjectKind kind, String name, Sums sums) {
        Sums some = bySubject.getOrDefault(kind, Map.of()).get(name);
        if (some != null) {
            sums.add(some);
        }
    }
}
