package counterbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What command lines mean, and how wrong ones are refused. */
class CommandLineTest {
    private final FakeShell shell = SampleCommands.shell();

    private String taken(String line) {
        FakeShell.Output output = shell.line(line);
        assertThat(output.messages()).isEmpty();
        assertThat(output.status()).isEqualTo(Status.DONE);
        return output.out().strip();
    }

    @Test
    void options_may_stand_anywhere_with_or_without_an_equals_sign() {
        String wanted = "K-1 4 QM-1 2026-03-05T20:00:00Z [] false";
        assertThat(taken("box take K-1 4 --part QM-1")).isEqualTo(wanted);
        assertThat(taken("box take --part=QM-1 K-1 4")).isEqualTo(wanted);
        assertThat(taken("box take K-1 --part QM-1 4")).isEqualTo(wanted);
    }

    @Test
    void values_may_be_negative_and_hold_blanks_quotes_and_equals_signs() {
        assertThat(taken("box take K-1 -4.5 --part \"a = 'b'\" --note=-1 --note -2 --dry-run"))
                .isEqualTo("K-1 -4.5 a = 'b' 2026-03-05T20:00:00Z [-1, -2] true");
    }

    @Test
    void words_from_the_operating_system_arrive_whole() {
        assertThat(shell.run(List.of("box", "take", "K 1", "--part", "two words")).out())
                .startsWith("K 1 - two words");
    }

    @Test
    void behind_two_hyphens_everything_is_an_argument() {
        assertThat(taken("box take --part=--x -- --dry-run")).startsWith("--dry-run - --x");
    }

    @Test
    void a_local_time_is_read_in_the_sites_zone() {
        assertThat(taken("box take K --part P --at '2026-03-05 14:20'"))
                .contains("2026-03-05T20:20:00Z");
        assertThat(taken("box take K --part P --at 2026-03-05T14:20+01:00"))
                .contains("2026-03-05T13:20:00Z");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    box take K --part P --dry        | box take has no option --dry
                    box take K --prat P              | box take has no option --prat; did you mean --part?
                    box take K --part                | option --part needs a value; write --part PART (or --part=PART where it begins with hyphens)
                    box take K --part --note x       | option --part needs a value; write --part PART (or --part=PART where it begins with hyphens)
                    box take K --part P --part Q     | --part is said 2 times; say it once
                    box take K                       | --part is missing: the kit part
                    box take --part P                | KIT is missing: the kit's serial
                    box take K --part P --dry-run=no | option --dry-run takes no value; leave out =no
                    box take K 1 2 --part P          | "2" is one word too many; put text with blanks between quotes
                    box take K four --part P         | QUANTITY "four" is not a number; write it as 12.5
                    box take K 1.2345 --part P       | QUANTITY "1.2345" has more than three decimal places; round it
                    box take K --part ''             | --part "" is empty; say something or leave it out
                    box take K --part P --at soon    | --at "soon" is not a time; write it as "2026-03-05 14:20", or with an offset as 2026-03-05T14:20-06:00
                    box take K --part P --at 2026-02-30T10:00Z | --at "2026-02-30T10:00Z" is not a time; write it as "2026-03-05 14:20", or with an offset as 2026-03-05T14:20-06:00
                    box show --format xml            | --format "xml" is not one of them; there are table, json, csv
                    box show --format jsn            | --format "jsn" is not one of them; did you mean json? there are table, json, csv
                    version 1                        | "1" is one word too many; version takes none
                    box                              | "box" alone is not a command; there are box show, box take
                    box tale K                       | there is no command "box tale"; did you mean box take?
                    bxo take                         | there is no command "bxo take"; did you mean box take?
                    verison                          | there is no command "verison"; did you mean version?
                    zebra                            | there is no command "zebra"
                    """)
    void a_wrong_line_is_refused_with_what_would_be_right(String line, String message) {
        FakeShell.Output output = shell.line(line);
        assertThat(output.status()).isEqualTo(Status.USAGE);
        assertThat(output.out()).isEmpty();
        assertThat(output.messages().get(0)).isEqualTo(message);
        assertThat(output.messages().get(1)).startsWith("see help");
        assertThat(output.messages()).hasSize(2);
    }

    @Test
    void everything_that_is_wrong_is_said_at_once() {
        assertThat(shell.line("box take K x y --at z").messages())
                .containsExactlyInAnyOrder(
                        "QUANTITY \"x\" is not a number; write it as 12.5",
                        "\"y\" is one word too many; put text with blanks between quotes",
                        "--at \"z\" is not a time; write it as \"2026-03-05 14:20\", or with an"
                                + " offset as 2026-03-05T14:20-06:00",
                        "--part is missing: the kit part",
                        "see help box take");
    }

    @Test
    void hidden_characters_of_a_wrong_word_are_shown() {
        assertThat(shell.run(List.of("ver\u001b[31m")).messages().get(0))
                .isEqualTo("there is no command \"ver\\u001b[31m\"");
    }

    @Test
    void help_is_shown_for_commands_of_two_words_too() {
        String page = shell.line("help box take").out();
        assertThat(page).contains("box take: Take a box into the store", "--part PART");
        assertThat(shell.line("box take --help").out()).isEqualTo(page);
        assertThat(shell.line("box take K --nonsense -h").status()).isEqualTo(Status.USAGE);
        assertThat(shell.line("box take K -h").out()).isEqualTo(page);
        assertThat(shell.line("box --help").status()).isEqualTo(Status.DONE);
    }
}
