package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Rules about claims and credits. */
final class ClaimRules {

    private final World world;
    private final CoreTerms terms;
    private final List<Finding> found = new ArrayList<>();
    private final Map<String, List<Facts.Claim>> ofJob = new LinkedHashMap<>();
    private final Map<String, List<Facts.Claim>> ofVin = new LinkedHashMap<>();
    private final Map<String, List<Facts.Credit>> ofClaim = new LinkedHashMap<>();

    ClaimRules(World world) {
        this.world = world;
        this.terms = new CoreTerms(world);
        for (Facts.Claim claim : world.facts.claims.values()) {
            ofJob.computeIfAbsent(claim.job(), j -> new ArrayList<>()).add(claim);
            ofVin.computeIfAbsent(job(claim).vin(), v -> new ArrayList<>()).add(claim);
        }
    }

    List<Finding> judge() {
        for (Facts.Credit credit : world.facts.credits) {
            Optional<Facts.Claim> claim = claimOf(credit);
            if (claim.isEmpty()) {
                unmatched(credit);
            } else {
                ofClaim.computeIfAbsent(claim.get().claim(), c -> new ArrayList<>()).add(credit);
            }
        }
        world.facts.claims.values().forEach(this::judge);
        return found;
    }

    private void judge(Facts.Claim claim) {
        twice(claim);
        late(claim);
        if (!grounded(claim)) {
            add("claim-ungrounded", claim, "");
        }
        List<Facts.Credit> credits = ofClaim.getOrDefault(claim.claim(), List.of());
        LocalDate patience = claim.submittedOn().plusDays(world.site.unpaidDays());
        if (credits.isEmpty() && world.today().isAfter(patience)) {
            add("claim-unpaid", claim, "");
        }
        List<BigDecimal> paid =
                credits.stream()
                        .filter(c -> !c.kind().equals("core"))
                        .map(Facts.Credit::amount)
                        .toList();
        BigDecimal sum = paid.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        if (!paid.isEmpty() && sum.compareTo(claim.total()) != 0) {
            add("paid-differently", claim, sum + " for " + claim.total());
        }
    }

    private void twice(Facts.Claim claim) {
        boolean earlier =
                ofJob.get(claim.job()).stream()
                        .filter(Facts.Claim::stands)
                        .anyMatch(other -> isEarlier(other, claim));
        if (earlier) {
            add("claimed-twice", claim, "");
        }
    }

    private static boolean isEarlier(Facts.Claim one, Facts.Claim other) {
        int days = one.submittedOn().compareTo(other.submittedOn());
        return days < 0 || (days == 0 && one.claim().compareTo(other.claim()) < 0);
    }

    private void late(Facts.Claim claim) {
        Facts.Job job = job(claim);
        int within = world.terms(job).submitWithinDays();
        if (job.completed()) {
            LocalDate last = world.clock.day(job.endedAt().orElseThrow()).plusDays(within);
            if (claim.submittedOn().isAfter(last)) {
                add("claimed-late", claim, "last day " + last);
            }
        }
    }

    private boolean grounded(Facts.Claim claim) {
        Instant end = world.clock.end(claim.submittedOn());
        Facts.Job job = job(claim);
        if (!job.completed() || !job.endedAt().orElseThrow().isBefore(end)) {
            return false;
        }
        String needs = world.terms(job).needs();
        if (needs.equals("none")) {
            return true;
        }
        List<Core> cores = terms.judgedCores(job);
        long met = cores.stream().filter(c -> met(c, needs, end)).count();
        return met == cores.size() && BigDecimal.valueOf(met).compareTo(terms.wanted(job)) >= 0;
    }

    private static boolean met(Core core, String needs, Instant end) {
        Optional<Instant> at =
                needs.equals("core-shipped") ? core.first("shipped") : core.firstAnswer();
        return at.map(t -> t.isBefore(end)).orElse(false);
    }

    /** The claim it names; else the only claim of the vehicle or of the core's job. */
    private Optional<Facts.Claim> claimOf(Facts.Credit credit) {
        if (!credit.claim().isEmpty()) {
            return Optional.ofNullable(world.facts.claims.get(credit.claim()));
        }
        if (!credit.vin().isEmpty()) {
            return only(ofVin.getOrDefault(credit.vin(), List.of()));
        }
        return world.cores.values().stream()
                .filter(c -> c.tag.equals(credit.core()) || isSerial(c, credit.serial()))
                .findFirst()
                .flatMap(c -> only(ofJob.getOrDefault(c.job, List.of())));
    }

    private static boolean isSerial(Core core, String serial) {
        return !serial.isEmpty() && core.serial.equals(serial);
    }

    private static Optional<Facts.Claim> only(List<Facts.Claim> claims) {
        List<Facts.Claim> standing = claims.stream().filter(Facts.Claim::stands).toList();
        return standing.size() == 1 ? Optional.of(standing.get(0)) : Optional.empty();
    }

    private void unmatched(Facts.Credit credit) {
        String subject = credit.remittance() + "/" + credit.line();
        String month = YearMonth.from(credit.paidOn()).toString();
        found.add(
                world.finding(
                        "credit-unmatched", "", "credit", subject, "", "", month, "" + credit));
    }

    private Facts.Job job(Facts.Claim claim) {
        return world.facts.jobs.get(claim.job());
    }

    private void add(String rule, Facts.Claim claim, String why) {
        String month = YearMonth.from(claim.submittedOn()).toString();
        found.add(
                world.finding(
                        rule, job(claim).campaign(), "claim", claim.claim(), "", "", month, why));
    }
}
