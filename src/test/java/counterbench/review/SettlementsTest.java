package counterbench.review;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Severity;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.people.Role;
import counterbench.shared.Address;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettlementsTest {
    private static final Instant NOON = Instant.parse("2026-03-05T12:00:00Z");

    private static Finding finding(Rule rule, SubjectKind kind, String evidence) {
        return new Finding(
                rule, "NORTH", null, Subject.of(kind, "X-1"), null, "a message", evidence);
    }

    private static Finding left(String evidence) {
        return finding(Rule.LEFT_ON_BENCH, SubjectKind.JOB, evidence);
    }

    private static Settlement settled(Finding finding, long entry, Instant at, boolean takenBack) {
        return new Settlement(
                new Address(entry, 1),
                FindingId.of(finding),
                at,
                "Maren",
                "counted again",
                Settlement.hashOf(finding),
                finding.evidence(),
                takenBack);
    }

    private static FindingState state(Finding finding, Settlement... settlements) {
        return new Settlements(List.of(settlements)).state(List.of(finding)).get(0).state();
    }

    @Test
    void a_finding_that_nobody_settled_is_open() {
        assertThat(state(left("2 left"))).isEqualTo(FindingState.OPEN);
    }

    @Test
    void it_stays_settled_on_the_same_evidence_and_opens_on_another() {
        Settlement settled = settled(left("2 left"), 5, NOON, false);
        assertThat(state(left("2 left"), settled)).isEqualTo(FindingState.SETTLED);
        assertThat(state(left("3 left"), settled)).isEqualTo(FindingState.OPEN);
    }

    @Test
    void the_last_word_counts_by_time_then_by_its_place_in_the_journal() {
        Settlement early = settled(left("2 left"), 9, NOON, false);
        Settlement late = settled(left("3 left"), 5, NOON.plusSeconds(1), false);
        assertThat(state(left("2 left"), late, early)).isEqualTo(FindingState.OPEN);
        assertThat(state(left("3 left"), late, early)).isEqualTo(FindingState.SETTLED);
        Settlement sameTime = settled(left("3 left"), 10, NOON, false);
        assertThat(state(left("3 left"), sameTime, early)).isEqualTo(FindingState.SETTLED);
    }

    @Test
    void what_was_taken_back_counts_for_nothing() {
        assertThat(state(left("2 left"), settled(left("2 left"), 5, NOON, true)))
                .isEqualTo(FindingState.OPEN);
    }

    @ParameterizedTest
    @CsvSource({
        "LEFT_ON_BENCH,JOB,TECHNICIAN",
        "KIT_INCOMPLETE,KIT,PARTS",
        "BALANCE_NEGATIVE,ACCOUNT,PARTS",
        "CORE_OVERDUE,CORE,PARTS",
        "ACKNOWLEDGEMENT_STRAY,SHIPMENT,PARTS",
        "CLAIM_UNPAID,CLAIM,WARRANTY",
        "CREDIT_UNMATCHED,CREDIT,WARRANTY",
        "DRAIN_SHORT,CORE,LEAD",
        "CLAIMED_TWICE,CLAIM,LEAD",
    })
    void a_stop_is_the_leads_to_settle_and_the_others_whoevers_work_it_is(
            Rule rule, SubjectKind kind, Role role) {
        assertThat(SettleRights.roleFor(finding(rule, kind, "e"))).isEqualTo(role);
    }

    @Test
    void an_open_note_need_not_be_settled() {
        Finding note = finding(Rule.CLAIM_UNPAID, SubjectKind.CLAIM, "e");
        assertThat(note.rule().severity()).isEqualTo(Severity.NOTE);
        assertThat(new Settlements(List.of()).state(List.of(note, left("e"))))
                .extracting(StatedFinding::mustBeSettled)
                .containsExactly(true, false);
    }
}
