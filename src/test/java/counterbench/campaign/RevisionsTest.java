package counterbench.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.shared.Problem;
import counterbench.shared.Quantity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class RevisionsTest {
    private static Pack pack(String campaign, String revision, String from, PartUnit unit) {
        KitLine line =
                new KitLine(
                        "QM-1",
                        "Sealant",
                        unit,
                        Quantity.ONE,
                        Quantity.ONE,
                        false,
                        false,
                        false,
                        false,
                        List.of(),
                        BigDecimal.ZERO,
                        Condition.ALWAYS);
        return new Pack(
                campaign,
                "Test",
                revision,
                LocalDate.parse(from),
                true,
                new TreeMap<>(),
                List.of(new KitTerms("QM-1-K", 1, Condition.ALWAYS, List.of(line))),
                List.of(),
                List.of(),
                List.of(),
                null);
    }

    private static Pack pack(String campaign, String revision, String from) {
        return pack(campaign, revision, from, PartUnit.ML);
    }

    private static List<String> messages(List<Pack> loaded, Pack pack) {
        return Revisions.problemsOf(loaded, pack).stream().map(Problem::message).toList();
    }

    private final Pack first = pack("C-1", "A", "2026-01-10");

    @Test
    void a_later_revision_and_another_campaign_with_the_same_kit_may_join() {
        assertThat(messages(List.of(), first)).isEmpty();
        assertThat(messages(List.of(first), pack("C-1", "B", "2026-01-11"))).isEmpty();
        assertThat(messages(List.of(first), pack("C-2", "A", "2025-01-01"))).isEmpty();
    }

    @Test
    void the_same_again_is_known() {
        assertThat(messages(List.of(first), pack("C-1", "A", "2026-01-10"))).isEmpty();
        assertThat(Revisions.isKnown(List.of(first), pack("C-1", "A", "2026-01-10"))).isTrue();
        assertThat(Revisions.isKnown(List.of(first), pack("C-1", "B", "2026-02-10"))).isFalse();
    }

    @Test
    void a_changed_revision_is_refused() {
        assertThat(messages(List.of(first), pack("C-1", "A", "2026-03-01")))
                .containsExactly(
                        "campaign C-1 revision A: this revision is there with other terms; give the"
                                + " changed terms a revision of their own");
    }

    @Test
    void a_revision_in_force_no_later_than_a_loaded_one_is_refused() {
        assertThat(messages(List.of(first), pack("C-1", "B", "2026-01-10")))
                .containsExactly(
                        "campaign C-1 revision B, in force from 2026-01-10: revision A is in force from"
                                + " 2026-01-10; revisions come one after the other,"
                                + " each in force later than the one before");
    }

    @Test
    void a_part_kept_in_another_unit_is_refused() {
        assertThat(messages(List.of(first), pack("C-2", "A", "2026-01-10", PartUnit.G)))
                .containsExactly(
                        "part QM-1 in g: a loaded pack has it in mL; keep a part in one unit in all"
                                + " packs");
    }
}
