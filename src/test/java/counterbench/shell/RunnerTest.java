package counterbench.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunnerTest {
    private final FakeShell shell = SampleCommands.shell();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    refused     | 1 | kit K-1: it is issued to job J-118; put it back
                    usage       | 2 | say one of the two
                    store       | 4 | the store is locked
                    wrapped     | 4 | the store is locked
                    interrupted | 5 | interrupted; what was not recorded yet is undone
                    thread      | 5 | interrupted; what was not recorded yet is undone
                    memory      | 4 | internal error: java.lang.OutOfMemoryError: no room (run it again with --debug to see where, and tell whoever looks after the program)
                    bug         | 4 | internal error: java.lang.IllegalStateException: oh\\u001b (run it again with --debug to see where, and tell whoever looks after the program)
                    """)
    void every_outcome_has_its_code_and_one_message(String how, int code, String message) {
        FakeShell.Output output = shell.run(List.of("fail", how));
        assertThat(output.status().code()).isEqualTo(code);
        assertThat(output.out()).isEqualToIgnoringNewLines("begun");
        assertThat(output.messages().get(0)).isEqualTo(message);
        assertThat(output.err()).doesNotContain("\tat ");
    }

    @Test
    void a_status_without_a_message_is_a_result() {
        FakeShell.Output output = shell.run(List.of("fail", "found"));
        assertThat(output.status().code()).isEqualTo(3);
        assertThat(output.err()).isEmpty();
    }

    @Test
    void only_debug_shows_the_stack_trace_wherever_it_stands() {
        assertThat(shell.run(List.of("fail", "--debug", "bug")).err())
                .contains("\tat counterbench");
        assertThat(shell.run(List.of("--debug", "fail", "store")).err())
                .startsWith("the store is locked")
                .contains("\tat counterbench");
        assertThat(shell.run(List.of("fail", "--", "--debug")).err()).doesNotContain("\tat ");
    }

    @Test
    void a_ctrl_c_of_the_command_before_does_not_stop_the_next() {
        shell.stop().ask();
        assertThat(shell.line("box show").status()).isEqualTo(Status.DONE);
    }

    @Test
    void a_script_stops_at_the_first_line_that_does_not_get_through() {
        FakeShell.Output output =
                shell.script("\ufeff# comment", "", "version", "fail refused", "version");
        assertThat(output.status()).isEqualTo(Status.REFUSED);
        assertThat(output.out().lines().filter(l -> l.startsWith("counterbench"))).hasSize(1);
        assertThat(output.err()).contains("script, line 4: stopped here");
    }

    @Test
    void a_ctrl_c_between_two_lines_ends_a_script() {
        shell.stop().ask();
        FakeShell.Output output = shell.script("version");
        assertThat(output.status()).isEqualTo(Status.INTERRUPTED);
        assertThat(output.out()).isEmpty();
    }

    @Test
    void exit_ends_a_script() {
        FakeShell.Output output = shell.script("quit", "fail refused");
        assertThat(output.status()).isEqualTo(Status.DONE);
        assertThat(output.screen()).isEmpty();
    }

    @Test
    void an_act_needs_somebody_signed_in() {
        assertThat(shell.line("act").messages())
                .containsExactly(
                        "this act: nobody is signed in; type sign-in NAME, or set"
                                + " COUNTERBENCH_PERSON and COUNTERBENCH_PIN");
    }

    @Test
    void the_environment_signs_in_once_and_chooses_the_site() {
        shell.with("COUNTERBENCH_PERSON", "Ada")
                .with("COUNTERBENCH_PIN", "2468")
                .with("COUNTERBENCH_SITE", "NORTH");
        assertThat(shell.line("act", "hello there").out().lines())
                .containsExactly("Ada at NORTH", "you said hello there");
        assertThat(shell.session().person()).isPresent();
        assertThat(shell.line("act --site SOUTH").out()).startsWith("Ada at SOUTH");
    }

    @Test
    void without_a_variable_the_pin_is_the_next_line() {
        shell.with("COUNTERBENCH_PERSON", "Ada");
        assertThat(shell.script("act", "2468", "words", "version").out().lines())
                .startsWith("Ada at the only site", "you said words")
                .hasSize(3);
    }

    @Test
    void a_wrong_pin_is_refused_and_never_shown() {
        FakeShell.Output output = shell.with("COUNTERBENCH_PERSON", "Ada").script("act", "1357");
        assertThat(output.status()).isEqualTo(Status.REFUSED);
        assertThat(output.screen()).contains("name and PIN do not fit").doesNotContain("1357");
        assertThat(shell.line("act").messages())
                .containsExactly("PIN: none was given; type it, or set COUNTERBENCH_PIN");
    }
}
