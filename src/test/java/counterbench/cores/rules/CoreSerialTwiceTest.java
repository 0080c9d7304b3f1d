package counterbench.cores.rules;

import static counterbench.cores.CoreStory.removed;
import static counterbench.cores.CoreStory.untold;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CoreSerialTwiceTest {
    private static final CoreSerialTwice RULE = new CoreSerialTwice();

    @Test
    void a_serial_on_other_cores_is_a_finding_that_names_them_sorted() {
        assertThat(removed().alsoBearsItsSerial("C-3", "C-2", "C-3").judgedBy(RULE))
                .singleElement()
                .satisfies(
                        f -> {
                            assertThat(f.message())
                                    .isEqualTo("core C-1: serial S-1 is on core C-2, C-3 as well");
                            assertThat(f.evidence()).isEqualTo("serial S-1, also C-2, C-3");
                        });
    }

    @Test
    void a_serial_of_its_own_is_in_order() {
        assertThat(removed().judgedBy(RULE)).isEmpty();
    }

    @Test
    void a_core_whose_serial_was_not_said_is_not_judged() {
        assertThat(
                        untold("C-1")
                                .removed("J-1", null, null, "2026-03-05T09:00")
                                .alsoBearsItsSerial("C-2")
                                .judgedBy(RULE))
                .isEmpty();
    }
}
