package counterbench.month.sheet;

import counterbench.claims.Credit;
import counterbench.claims.CreditFacts;
import counterbench.claims.Standing;
import counterbench.review.JobFile;
import counterbench.spool.SpooledRows;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The lines of remittances that were paid in the month. */
final class CreditsSheet {
    private final SiteMonth period;
    private final SpooledRows rows;
    private final Map<String, List<Credit>> ofCores = new HashMap<>();

    CreditsSheet(SiteMonth period, SpooledRows rows) {
        this.period = period;
        this.rows = rows;
    }

    /** Takes a line that names no claim that there is. */
    void addOfNoClaim(CreditFacts credit) {
        if (credit.core() == null) {
            write(credit.credit(), null, null);
        } else {
            ofCores.computeIfAbsent(credit.core(), c -> new ArrayList<>()).add(credit.credit());
        }
    }

    /** Adds the lines that name a claim of the job; of one that fell, that it did. */
    void addOfClaims(JobFile file) {
        Map<String, String> fallen = new HashMap<>();
        file.claims().stream()
                .map(claim -> Standing.of(claim, List.of()))
                .filter(standing -> !standing.stands())
                .forEach(
                        standing ->
                                fallen.put(
                                        standing.claim().claim(), ", " + standing.state().words()));
        for (Credit credit : file.credits()) {
            String fell = fallen.getOrDefault(credit.claim(), "");
            write(credit, credit.claim() + fell, file.name());
        }
    }

    /** Adds the lines that name no claim but a core of the job, and hands them over. */
    List<Credit> takeOfCore(String core, String job) {
        List<Credit> credits = ofCores.getOrDefault(core, List.of());
        ofCores.remove(core);
        credits.forEach(credit -> write(credit, core, job));
        return credits;
    }

    /** Adds what is left once all jobs are added. */
    void end() {
        ofCores.forEach((core, credits) -> credits.forEach(c -> write(c, core, null)));
        ofCores.clear();
    }

    /** Lines that are numbers stand in the order of numbers. */
    private static Object numbered(String line) {
        return line.matches("[0-9]{1,9}") ? Integer.valueOf(line) : line;
    }

    private void write(Credit credit, @Nullable String matched, @Nullable String job) {
        if (!period.books(credit.paidOn(), credit.address())) {
            return;
        }
        @Nullable String said = credit.currency();
        rows.add(
                List.of(credit.paidOn(), credit.remittance(), numbered(credit.line())),
                new RowOf()
                        .with("remittance", credit.remittance())
                        .with("line", credit.line())
                        .with("paid_on", credit.paidOn())
                        .with("kind", credit.kind().word())
                        .with("claim", credit.claim())
                        .with("job", job)
                        .with("core", credit.core())
                        .with("serial", credit.serial())
                        .with("vin", credit.vin())
                        .with("amount", credit.amount())
                        .with(
                                "currency",
                                said == null ? period.site().currency().getCurrencyCode() : said)
                        .with("matched", matched)
                        .values());
    }
}
