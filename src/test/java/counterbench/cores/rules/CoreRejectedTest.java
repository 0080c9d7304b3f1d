package counterbench.cores.rules;

import static counterbench.cores.CoreEvent.Kind.ACCEPTED;
import static counterbench.cores.CoreEvent.Kind.RECEIVED;
import static counterbench.cores.CoreEvent.Kind.REJECTED;
import static counterbench.cores.CoreStory.removed;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.judgement.Finding;
import org.junit.jupiter.api.Test;

class CoreRejectedTest {
    private static final CoreRejected RULE = new CoreRejected();
    private static final String FIRST = "2026-03-20T10:00";
    private static final String THEN = "2026-03-21T10:00";

    @Test
    void a_rejected_core_is_a_finding_with_the_reason() {
        assertThat(removed().rejected("cracked", FIRST).judgedBy(RULE))
                .singleElement()
                .returns("core C-1: rejected on 2026-03-20: cracked", Finding::message);
    }

    @Test
    void a_rejection_on_the_sheet_of_the_return_centre_counts_alike() {
        assertThat(removed().answered("S-1", REJECTED, "C-1", null, FIRST).judgedBy(RULE))
                .singleElement()
                .returns("rejected on 2026-03-20: no reason said", Finding::evidence);
    }

    @Test
    void one_accepted_since_is_in_order_and_one_accepted_before_is_not() {
        assertThat(removed().tell(REJECTED, FIRST).tell(ACCEPTED, THEN).judgedBy(RULE)).isEmpty();
        assertThat(removed().tell(REJECTED, THEN).tell(ACCEPTED, FIRST).judgedBy(RULE)).hasSize(1);
    }

    @Test
    void at_one_instant_the_later_row_holds() {
        assertThat(removed().tell(REJECTED, FIRST).tell(ACCEPTED, FIRST).judgedBy(RULE)).isEmpty();
        assertThat(removed().tell(ACCEPTED, FIRST).tell(REJECTED, FIRST).judgedBy(RULE)).hasSize(1);
    }

    @Test
    void received_decides_nothing() {
        assertThat(removed().tell(RECEIVED, FIRST).judgedBy(RULE)).isEmpty();
        assertThat(removed().tell(REJECTED, FIRST).tell(RECEIVED, THEN).judgedBy(RULE)).hasSize(1);
    }
}
