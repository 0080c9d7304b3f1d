package counterbench.cores;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.Condition;
import counterbench.campaign.CoreTerms;
import counterbench.campaign.Pack;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class DueCoresTest {
    private static final Condition AUTOMATIC = new Condition(Map.of("transmission", "automatic"));
    private static final CoreTerms PUMP = line("QM-1", 1, Condition.ALWAYS);
    private static final CoreTerms COOLER = line("QM-2", 2, AUTOMATIC);
    private static final Map<String, String> MANUAL_BOX = Map.of("transmission", "manual");
    private static final Map<String, String> AUTOMATIC_BOX = Map.of("transmission", "automatic");

    private static CoreTerms line(String part, int quantity, Condition when) {
        return new CoreTerms(part, quantity, when, BigDecimal.TEN, 1, null, null, BigDecimal.ZERO);
    }

    static Pack pack(CoreTerms... cores) {
        return new Pack(
                "QM-26-014",
                "Transfer pump",
                "A",
                LocalDate.parse("2026-02-02"),
                true,
                new TreeMap<>(),
                List.of(),
                List.of(),
                List.of(),
                List.of(cores),
                null);
    }

    private static DueCores due(Map<String, String> attributes) {
        return new DueCores(pack(PUMP, COOLER), attributes);
    }

    @Test
    void lines_that_apply_add_up() {
        assertThat(due(AUTOMATIC_BOX).wanted()).isEqualTo(3);
        assertThat(due(MANUAL_BOX).wanted()).isEqualTo(1);
    }

    @Test
    void a_line_that_cannot_be_told_to_apply_wants_nothing() {
        assertThat(due(Map.of()).wanted()).isEqualTo(1);
    }

    @Test
    void a_core_is_judged_by_the_line_of_its_part() {
        assertThat(due(AUTOMATIC_BOX).termsOf("QM-2")).contains(COOLER);
        assertThat(due(MANUAL_BOX).termsOf("QM-2")).isEmpty();
        assertThat(due(Map.of()).termsOf("QM-2")).isEmpty();
    }

    @Test
    void a_core_of_a_part_unsaid_or_unnamed_is_judged_by_the_first_line_that_applies() {
        assertThat(due(AUTOMATIC_BOX).termsOf(null)).contains(PUMP);
        assertThat(due(MANUAL_BOX).termsOf("QM-9")).contains(PUMP);
        assertThat(new DueCores(pack(), AUTOMATIC_BOX).termsOf("QM-1")).isEmpty();
    }

    @Test
    void a_core_that_may_come_under_a_line_that_cannot_be_told_has_no_terms() {
        assertThat(due(Map.of()).termsOf(null)).isEmpty();
        assertThat(due(Map.of()).termsOf("QM-1")).contains(PUMP);
    }

    @Test
    void a_core_may_be_wanted_where_a_line_known_to_apply_concerns_it() {
        assertThat(due(Map.of()).mayBeWanted("QM-1")).isTrue();
        assertThat(due(Map.of()).mayBeWanted(null)).isTrue();
        assertThat(due(Map.of()).mayBeWanted("QM-2")).isFalse();
        assertThat(due(MANUAL_BOX).mayBeWanted("QM-2")).isFalse();
    }
}
