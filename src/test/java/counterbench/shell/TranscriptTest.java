package counterbench.shell;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class TranscriptTest {
    private static void replay(String name) throws Exception {
        FakeShell shell = SampleCommands.shell();
        Transcript.of(name).replay(new Runner(shell.commands()), shell.circumstances());
    }

    @Test
    void the_shell_speaks_as_written_down() throws Exception {
        replay("shell");
    }

    @Test
    void a_transcript_that_is_not_so_fails() {
        assertThatThrownBy(() -> replay("not-so"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("there is no command \"verison\"");
    }
}
