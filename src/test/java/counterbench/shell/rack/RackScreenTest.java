package counterbench.shell.rack;

import static counterbench.shell.rack.RackShells.OPEN;
import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a person at a terminal sees of the rack, and is asked. */
class RackScreenTest {
    @Test
    void the_board_is_a_table_that_fits_the_terminal() {
        try (Larkmere larkmere = Larkmere.full(TestStores.H2)) {
            FakeShell hal = RackShells.hal(larkmere);
            for (int width : List.of(80, 100, 110, 200)) {
                var board = hal.onScreen(width).line("rack").out();

                assertThat(board.lines()).as(board).allMatch(line -> line.length() <= width);
                assertThat(board.contains("(no room for since, charge; ")).isEqualTo(width == 80);
                assertThat(board.lines().toList().get(2))
                        .startsWith("core     state     " + (width == 80 ? "next  " : "since  "));
                assertThat(board)
                        .containsPattern(
                                "(?m)^NC-0001  packed .* add to shipment .* 4 of 4 .* -65 ")
                        .containsPattern("(?m)^NC-0075  draining .* wait 8 min, until .* 0 of 4");
            }
        }
    }

    @Test
    void cores_that_are_proposed_go_on_with_a_yes_only() {
        try (Larkmere larkmere = Larkmere.full(TestStores.H2)) {
            FakeShell hal = RackShells.hal(larkmere).onScreen(100);
            hal.line(OPEN);
            for (String answer : List.of("no", " N ", "", "maybe")) {
                var asked = hal.line("shipment add SH-N14", answer);

                assertThat(asked.status()).as(answer).isEqualTo(Status.REFUSED);
                assertThat(asked.err())
                        .endsWith(
                                "shipment add SH-N14: no core was put on; name the cores instead\n");
            }
            var added = hal.line("shipment add SH-N14", "Y");

            assertThat(added.screen())
                    .contains(
                            "Put on NC-0001 (by 2026-02-04), NC-0072 (by 2026-04-30)? Type yes or"
                                    + " no:")
                    .contains("cores NC-0001, NC-0072 on shipment SH-N14");
        }
    }

    @Test
    void what_is_no_answer_is_asked_again() {
        try (Larkmere larkmere = Larkmere.full(TestStores.H2)) {
            FakeShell hal = RackShells.hal(larkmere).onScreen(100);
            hal.line(OPEN);

            var added = hal.line("shipment add SH-N14", "", "NC-0072", "yes");

            assertThat(added.screen().split("Type yes or no:", -1)).hasSize(4);
            assertThat(added.out()).contains("cores NC-0001, NC-0072 on shipment SH-N14");
        }
    }
}
