package counterbench.cores;

import static counterbench.campaign.ClaimTerms.Needs.CORE_ACKNOWLEDGED;
import static counterbench.campaign.ClaimTerms.Needs.CORE_SHIPPED;
import static counterbench.campaign.ClaimTerms.Needs.NONE;
import static counterbench.cores.CoreEvent.Kind.RECEIVED;
import static counterbench.cores.CoreEvent.Kind.SHIPPED;
import static counterbench.cores.CoreStory.SITE;
import static counterbench.cores.CoreStory.removed;
import static counterbench.cores.CoreStory.terms;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.CoreTerms;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class JobCoresFactsTest {
    private static final CoreTerms PUMP = terms("12", 5, null, 30);
    private static final Instant END = SITE.endOf(LocalDate.parse("2026-03-10"));
    private static final CoreHistory IN_TIME =
            removed().shipment(SHIPPED, "S-1", "2026-03-10T23:59").history();
    private static final CoreHistory NEXT_DAY =
            removed().shipment(SHIPPED, "S-1", "2026-03-11T00:00").history();

    private static JobCoresFacts of(List<CoreTerms> lines, CoreHistory... cores) {
        DueCores due = new DueCores(DueCoresTest.pack(lines.toArray(CoreTerms[]::new)), Map.of());
        return new JobCoresFacts(SITE, CoreStory.openJob(), due, List.of(cores));
    }

    private static JobCoresFacts of(CoreHistory... cores) {
        return of(List.of(PUMP), cores);
    }

    @Test
    void a_claim_that_needs_nothing_has_it() {
        assertThat(of().meet(NONE, END)).isTrue();
    }

    @Test
    void a_core_shipped_on_the_day_is_shipped_and_one_shipped_at_midnight_is_not() {
        assertThat(of(IN_TIME).meet(CORE_SHIPPED, END)).isTrue();
        assertThat(of(NEXT_DAY).meet(CORE_SHIPPED, END)).isFalse();
    }

    @Test
    void a_core_that_was_never_removed_is_not_shipped() {
        assertThat(of().meet(CORE_SHIPPED, END)).isFalse();
        assertThat(of(List.of(PUMP, PUMP), IN_TIME).meet(CORE_SHIPPED, END)).isFalse();
    }

    @Test
    void every_core_must_have_met_the_needs() {
        assertThat(of(IN_TIME, NEXT_DAY).meet(CORE_SHIPPED, END)).isFalse();
        assertThat(of(IN_TIME, IN_TIME).meet(CORE_SHIPPED, END)).isTrue();
    }

    @Test
    void cores_that_no_terms_want_hold_nothing_up() {
        assertThat(of(List.of(), NEXT_DAY).meet(CORE_SHIPPED, END)).isTrue();
    }

    @Test
    void any_word_of_the_return_centre_acknowledges() {
        CoreHistory received = removed().tell(RECEIVED, "2026-03-10T23:59").history();
        assertThat(of(received).meet(CORE_ACKNOWLEDGED, END)).isTrue();
        assertThat(of(IN_TIME).meet(CORE_ACKNOWLEDGED, END)).isFalse();
    }
}
