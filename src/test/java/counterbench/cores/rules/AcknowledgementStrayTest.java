package counterbench.cores.rules;

import static counterbench.cores.CoreEvent.Kind.RECEIVED;
import static counterbench.cores.CoreStory.SITE;
import static counterbench.cores.CoreStory.at;
import static counterbench.cores.CoreStory.untold;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.cores.Acknowledgement;
import counterbench.cores.CoreHistory;
import counterbench.cores.ShipmentFacts;
import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Address;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** On the shipment are C-1 with serial S-1, and C-2 whose serial nobody noted. */
class AcknowledgementStrayTest {
    private static final List<CoreHistory> ON_IT = List.of(core("C-1", "S-1"), core("C-2", null));

    private static CoreHistory core(String tag, @Nullable String serial) {
        return untold(tag).removed("J-1", serial, null, "2026-03-05T09:00").history();
    }

    private static Acknowledgement row(@Nullable String core, @Nullable String serial) {
        return new Acknowledgement(
                new Address(1, 1), "SH-1", at("2026-03-20T10:00"), RECEIVED, core, serial, null);
    }

    private static List<Finding> judged(Acknowledgement... rows) {
        Findings findings = new Findings();
        new AcknowledgementStray()
                .judge(new ShipmentFacts(SITE, "SH-1", ON_IT, List.of(rows)), findings);
        return findings.found();
    }

    @Test
    void all_strays_of_a_shipment_are_one_finding_sorted_and_without_repeats() {
        assertThat(judged(row(null, "S-9"), row("C-9", null), row("C-8", null), row("C-9", null)))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.message())
                                    .isEqualTo(
                                            "shipment SH-1: the return centre names what is not on"
                                                    + " it: core C-8, core C-9, serial S-9");
                            assertThat(f.evidence())
                                    .isEqualTo("not on it: core C-8, core C-9, serial S-9");
                            assertThat(f.subject())
                                    .isEqualTo(Subject.of(SubjectKind.SHIPMENT, "SH-1"));
                            assertThat(f.month()).isNull();
                        });
    }

    @Test
    void cores_and_serials_of_the_shipment_are_in_order() {
        assertThat(judged(row("C-1", "S-1"), row("C-2", null), row(null, "S-1"), row(null, null)))
                .isEmpty();
    }

    @Test
    void either_name_of_a_row_may_be_the_stray() {
        assertThat(judged(row("C-1", "S-9")))
                .singleElement()
                .returns("not on it: serial S-9", Finding::evidence);
        assertThat(judged(row("C-9", "S-1")))
                .singleElement()
                .returns("not on it: core C-9", Finding::evidence);
    }

    @Test
    void the_serial_of_a_named_core_is_not_wrong_where_we_do_not_know_it() {
        assertThat(judged(row("C-2", "S-9"))).isEmpty();
        assertThat(judged(row(null, "S-9"))).hasSize(1);
    }
}
