package counterbench.claims.rules;

import static counterbench.claims.ClaimStory.SITE;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.claims.Credit;
import counterbench.claims.CreditFacts;
import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class CreditUnmatchedTest {
    private static Credit credit(
            Credit.Kind kind, @Nullable String claim, @Nullable String vin, @Nullable String core) {
        return new Credit(
                "R-1",
                "7",
                new BigDecimal("480"),
                LocalDate.parse("2026-04-30"),
                claim,
                vin,
                core,
                null,
                kind);
    }

    private static List<Finding> judged(
            Credit credit, @Nullable String claim, @Nullable String core) {
        Findings findings = new Findings();
        new CreditUnmatched().judge(new CreditFacts(SITE, credit, claim, core), findings);
        return findings.found();
    }

    @Test
    void a_credit_that_names_an_unknown_claim_is_a_finding_in_the_month_of_payment() {
        assertThat(judged(credit(Credit.Kind.CLAIM, "CL-9", null, null), null, null))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.subject())
                                    .isEqualTo(Subject.of(SubjectKind.CREDIT, "R-1/7"));
                            assertThat(f.month()).isEqualTo(YearMonth.of(2026, 4));
                            assertThat(f.message())
                                    .isEqualTo(
                                            "credit R-1/7: 480.00 USD of 2026-04-30 belong to no"
                                                    + " claim; names claim CL-9");
                            assertThat(f.evidence())
                                    .isEqualTo("480.00 USD of 2026-04-30, names claim CL-9");
                        });
    }

    @Test
    void a_credit_that_names_no_claim_is_unmatched_whatever_else_it_names() {
        assertThat(judged(credit(Credit.Kind.CLAIM, null, "0VIN", "C-1"), null, "C-1"))
                .singleElement()
                .returns("480.00 USD of 2026-04-30, names VIN 0VIN, core C-1", Finding::evidence);
        assertThat(judged(credit(Credit.Kind.REVERSAL, null, null, null), null, null))
                .singleElement()
                .returns("480.00 USD of 2026-04-30, names nothing", Finding::evidence);
    }

    @Test
    void a_credit_that_belongs_to_a_claim_is_in_order() {
        assertThat(judged(credit(Credit.Kind.CLAIM, "CL-1", null, null), "CL-1", null)).isEmpty();
        assertThat(judged(credit(Credit.Kind.CLAIM, null, "0VIN", null), "CL-1", null)).isEmpty();
    }

    @Test
    void a_core_credit_for_a_known_core_belongs_to_that_core() {
        assertThat(judged(credit(Credit.Kind.CORE, null, null, "C-1"), null, "C-1")).isEmpty();
        assertThat(judged(credit(Credit.Kind.CORE, null, null, "C-9"), null, null)).hasSize(1);
    }
}
