package counterbench.oracle;

import static counterbench.oracle.Fault.*;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;

/** Claims for completed jobs, and what was paid for them. */
final class ClaimWriter {

    private static final BigDecimal TEN = new BigDecimal("10.00");

    private final Office office;
    private int remittance;

    ClaimWriter(Office office) {
        this.office = office;
    }

    void write(JobStory story) {
        LocalDate completed = office.clock.day(story.completed);
        LocalDate met = met(story);
        int within = story.pack.submitWithinDays();
        if (story.is(CLAIM_BEFORE_COMPLETION)) {
            claim(story, completed.minusDays(1));
        } else if (story.is(CLAIM_SAME_DAY)) {
            claim(story, completed);
        } else if (story.is(CLAIM_LATE)) {
            claim(story, completed.plusDays(within + 1L));
        } else if (story.is(CLAIM_LAST_DAY)) {
            claim(story, completed.plusDays(within));
        } else if (met != null && story.is(CLAIM_BEFORE_CORE)) {
            claim(story, met.minusDays(1));
        } else if (met != null && story.is(CLAIM_ON_CORE_DAY)) {
            claim(story, met);
        } else if (met != null && (story.fault.isPresent() || office.dice.percent(93))) {
            claim(story, met.plusDays(office.dice.between(1, 12)));
        }
    }

    /** The day from which the claim is grounded; null where it never is. */
    private LocalDate met(JobStory story) {
        Instant at =
                switch (story.pack.needs()) {
                    case "core-shipped" -> story.coresShipped;
                    case "core-acknowledged" -> story.coresAnswered;
                    default -> story.completed;
                };
        boolean core = !story.pack.needs().equals("none");
        if (at == null || (core && (!story.allCoresMeet || story.is(CORE_MISSING)))) {
            return null;
        }
        LocalDate day = office.clock.day(at);
        LocalDate completed = office.clock.day(story.completed);
        return day.isBefore(completed) ? completed : day;
    }

    private void claim(JobStory story, LocalDate day) {
        String first = office.next("CL-");
        boolean again =
                story.is(CLAIM_WITHDRAWN, CLAIM_DENIED, CLAIM_WITHDRAWN_LONG_AGO, CLAIM_TWICE);
        BigDecimal total = row(story, first, day, again && !story.is(CLAIM_TWICE), "");
        if (again) {
            String second = office.next("CL-");
            LocalDate later = day.plusDays(5);
            pay(story, second, later, row(story, second, later, false, first));
        }
        if (!again || story.is(CLAIM_TWICE)) {
            pay(story, first, day, total);
        }
    }

    private BigDecimal row(
            JobStory story, String claim, LocalDate day, boolean ends, String replaces) {
        BigDecimal labour = money(9_000, 52_000);
        BigDecimal parts = money(18_000, 40_000);
        BigDecimal charge = office.dice.percent(15) ? money(4_000, 9_000) : BigDecimal.ZERO;
        String ended = ends ? day.plusDays(3).toString() : "";
        office.out.row(
                "claims",
                "claim",
                claim,
                "job",
                story.job,
                "submitted_on",
                day.toString(),
                "labour_hours",
                "2.5",
                "labour_amount",
                labour.toPlainString(),
                "parts_amount",
                parts.toPlainString(),
                "core_charge",
                charge.signum() == 0 ? "" : charge.toPlainString(),
                "currency",
                office.site.currency(),
                "withdrawn_on",
                story.is(CLAIM_WITHDRAWN, CLAIM_WITHDRAWN_LONG_AGO) ? ended : "",
                "denied_on",
                story.is(CLAIM_DENIED) ? ended : "",
                "reason",
                ends ? "wrong hours" : "",
                "replaces",
                replaces,
                "by",
                Office.WARRANTY);
        return labour.add(parts).add(charge);
    }

    private BigDecimal money(int low, int high) {
        return BigDecimal.valueOf(office.dice.between(low, high), 2);
    }

    private void pay(JobStory story, String claim, LocalDate submitted, BigDecimal total) {
        LocalDate day = submitted.plusDays(office.dice.between(15, 40));
        if (story.is(UNPAID)) {
            return;
        }
        if (story.is(CREDIT_UNMATCHED)) {
            credit(office.next("CL-9"), total, day, "claim", "");
        }
        switch (story.fault.orElse(LEFT)) {
            case PAID_LESS -> credit(claim, total.subtract(TEN), day, "", "");
            case PAID_IN_TWO -> {
                credit(claim, TEN, day, "claim", "");
                credit(claim, total.subtract(TEN), day.plusDays(3), "", "");
            }
            case PAID_AND_REVERSED, PAID_AGAIN_AFTER_REVERSAL -> {
                credit(claim, total, day, "claim", "");
                credit(claim, total.negate(), day.plusDays(4), "reversal", "");
                if (story.is(PAID_AGAIN_AFTER_REVERSAL)) {
                    credit(claim, total, day.plusDays(9), "claim", "");
                }
            }
            case CORE_CREDIT -> {
                credit(claim, total, day, "claim", "");
                String core = story.cores.get(0).tag();
                credit(claim, new BigDecimal("310.00"), day.plusDays(1), "core", core);
            }
            case CREDIT_BY_VIN -> credit("", total, day, "claim", "", story.vin);
            case CREDIT_BY_CORE -> credit("", total, day, "claim", story.cores.get(0).tag());
            case CORE_CREDIT_ONLY -> credit(claim, TEN, day, "core", story.cores.get(0).tag());
            default -> credit(claim, total, day, office.dice.percent(50) ? "" : "claim", "");
        }
    }

    private void credit(String claim, BigDecimal amount, LocalDate day, String kind, String core) {
        credit(claim, amount, day, kind, core, "");
    }

    private void credit(
            String claim, BigDecimal amount, LocalDate day, String kind, String core, String vin) {
        office.out.row(
                "credits",
                "remittance",
                "RM-" + (++remittance / 7),
                "line",
                "" + remittance,
                "amount",
                amount.toPlainString(),
                "paid_on",
                day.toString(),
                "claim",
                claim,
                "vin",
                vin,
                "core",
                core,
                "currency",
                office.site.currency(),
                "kind",
                kind);
    }
}
