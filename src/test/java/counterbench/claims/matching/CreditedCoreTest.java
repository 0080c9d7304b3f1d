package counterbench.claims.matching;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.claims.Credit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class CreditedCoreTest {
    private static final Candidate.Core FIRST = new Candidate.Core("NC-0013", "7P331902");
    private static final Candidate.Core SECOND = new Candidate.Core("NC-0047", "7P880415");
    private static final List<Candidate.Core> ONE = List.of(FIRST);
    private static final List<Candidate.Core> TWO = List.of(FIRST, SECOND);

    private static Credit named(@Nullable String tag, @Nullable String serial) {
        return new Credit(
                "RM-1",
                "1",
                new BigDecimal("395.00"),
                LocalDate.parse("2026-02-13"),
                "CN-017",
                null,
                tag,
                serial,
                Credit.Kind.CORE);
    }

    private static Credit matched(@Nullable String tag, @Nullable String serial) {
        Credit said = named(tag, serial);
        return said.matchedTo("CN-017", said.amount());
    }

    @Test
    void a_line_is_for_the_core_that_it_names_by_tag_or_else_by_serial() {
        assertThat(CreditedCore.of(named("NC-0047", null), TWO)).contains("NC-0047");
        assertThat(CreditedCore.of(named(null, "7P880415"), TWO)).contains("NC-0047");
        assertThat(CreditedCore.of(matched("NC-0047", "7P331902"), TWO)).contains("NC-0047");
    }

    @Test
    void nothing_is_guessed_of_a_line_that_nobody_matched() {
        assertThat(CreditedCore.of(named("NC-O013", null), ONE)).isEmpty();
        assertThat(CreditedCore.of(named("NC-O013", "7P331902"), ONE)).isEmpty();
        assertThat(CreditedCore.of(named(null, null), ONE)).isEmpty();
    }

    @Test
    void one_that_was_matched_is_for_the_only_core_or_the_only_near_one() {
        assertThat(CreditedCore.of(matched("NC-OO99", null), ONE)).contains("NC-0013");
        assertThat(CreditedCore.of(matched(null, null), ONE)).contains("NC-0013");
        assertThat(CreditedCore.of(matched("NC-O047", null), TWO)).contains("NC-0047");
        assertThat(CreditedCore.of(matched(null, "7P33190Z"), TWO)).contains("NC-0013");
    }

    @Test
    void which_of_several_it_is_for_stays_open_where_none_or_more_are_near() {
        assertThat(CreditedCore.of(matched(null, null), TWO)).isEmpty();
        assertThat(CreditedCore.of(matched("NC-OO99", null), TWO)).isEmpty();
        List<Candidate.Core> alike = List.of(FIRST, new Candidate.Core("NC-0014", null));
        assertThat(CreditedCore.of(matched("NC-001E", null), alike)).isEmpty();
        assertThat(CreditedCore.of(matched("NC-0013", null), List.of())).isEmpty();
    }
}
