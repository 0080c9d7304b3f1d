package counterbench.shell.console;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import counterbench.people.Person;
import counterbench.shell.FakeShell;
import counterbench.shell.SampleCommands;
import counterbench.shell.Status;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.ExternalTerminal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shell as a person meets it: keys go in, a screen comes out. */
class ConversationTest {
    private static final String CTRL_C = "\003";
    private static final String CTRL_D = "\004";
    private static final String TAB = "\t";

    @TempDir Path home;

    private final PipedOutputStream keys = new PipedOutputStream();
    private final ByteArrayOutputStream screen = new ByteArrayOutputStream();
    private FakeShell shell;
    private CompletableFuture<Status> talk;

    @BeforeEach
    void sit_down() throws IOException {
        shell =
                SampleCommands.shell()
                        .with("COUNTERBENCH_HOME", home.resolve("h").toString())
                        .with("NO_COLOR", "1")
                        .with("TERM", "ansi");
        Terminal terminal =
                new ExternalTerminal("test", "ansi", new PipedInputStream(keys), screen, UTF_8);
        terminal.setSize(new Size(100, 40));
        Conversation conversation =
                new Conversation(
                        shell.commands(),
                        shell.circumstances(),
                        () ->
                                shell.session().person().map(Person::name).orElse("counterbench")
                                        + "> ",
                        () -> terminal);
        talk =
                CompletableFuture.supplyAsync(
                        () -> {
                            try {
                                return conversation.call();
                            } catch (Exception e) {
                                throw new IllegalStateException(e);
                            }
                        });
        sees("counterbench> ");
    }

    private void types(String text) throws IOException {
        screen.reset();
        keys.write(text.getBytes(UTF_8));
        keys.flush();
    }

    private String shown() {
        return screen.toString(UTF_8).replaceAll("\u001b\\[[0-9;?]*[a-zA-Z]", "");
    }

    private void sees(String text) {
        await().atMost(Duration.ofSeconds(30))
                .pollInterval(Duration.ofMillis(10))
                .untilAsserted(() -> assertThat(shown()).contains(text));
    }

    private void leaves() throws IOException, ExecutionException, InterruptedException {
        types(CTRL_D);
        try {
            assertThat(talk.get(30, TimeUnit.SECONDS)).isEqualTo(Status.DONE);
        } catch (java.util.concurrent.TimeoutException e) {
            throw new AssertionError("the shell did not end; it shows: " + shown(), e);
        }
    }

    @Test
    void commands_run_and_refusals_leave_the_shell_alive() throws Exception {
        types("box take 'K 1' 4 --part P\r");
        sees("K 1 4 P");
        sees("counterbench> ");
        types("fail refused\r");
        sees("kit K-1: it is issued to job J-118; put it back");
        sees("counterbench> ");
        leaves();
    }

    @Test
    void ctrl_c_at_the_prompt_drops_the_line() throws Exception {
        types("fail bug");
        sees("fail bug");
        types(CTRL_C);
        sees("counterbench> ");
        types("version\r");
        sees("counterbench not packaged");
        assertThat(shown()).doesNotContain("internal error");
        leaves();
    }

    @Test
    void ctrl_c_in_a_command_stops_it_and_the_shell_lives() throws Exception {
        types("work\r");
        sees("working");
        types(CTRL_C);
        sees("interrupted; what was not recorded yet is undone");
        sees("counterbench> ");
        types("version\r");
        sees("counterbench not packaged");
        leaves();
    }

    @Test
    void exit_leaves_too() throws Exception {
        types("exit\r");
        assertThat(talk.get(30, TimeUnit.SECONDS)).isEqualTo(Status.DONE);
    }

    @Test
    void answers_are_taken_as_they_are_and_a_pin_is_not_shown() throws Exception {
        shell.session();
        types("sign\r");
        sees("PIN: ");
        types("2468\r");
        sees("anything? ");
        assertThat(shown()).doesNotContain("2468");
        types("x'y\\ !z #1\r");
        sees("you said x'y\\ !z #1");
        sees("Ada> ");
        leaves();
        assertThat(Files.readString(home.resolve("h/history")))
                .contains("sign")
                .doesNotContain("2468", "x'y");
    }

    @Test
    void what_is_typed_ahead_of_a_question_for_a_pin_is_not_shown_either() throws Exception {
        types("work\r");
        sees("working");
        types("2468");
        types(CTRL_C);
        sees("interrupted");
        assertThat(shown().substring(0, shown().indexOf("interrupted"))).doesNotContain("2468");
        types("\177\177\177\177");
        leaves();
    }

    @Test
    void ctrl_c_at_a_question_gives_up_the_command_only() throws Exception {
        types("sign\r");
        sees("PIN: ");
        types(CTRL_C);
        sees("interrupted");
        sees("counterbench> ");
        leaves();
    }

    @Test
    void tab_completes_commands_options_and_live_values() throws Exception {
        types("box ta" + TAB);
        sees("box take ");
        types("K-1 --pa" + TAB);
        sees("--part ");
        types("QM-449" + TAB + "\r");
        sees("K-1 - QM-4490-K");
        leaves();
    }

    @Test
    void lines_that_may_hold_a_secret_are_not_kept() throws Exception {
        types("sign-in Ada 2468\r");
        sees("there is no command");
        types("person pin Ada 2468\r");
        sees("there is no command");
        types("version\r");
        sees("not packaged");
        leaves();
        assertThat(Files.readString(home.resolve("h/history")))
                .contains("version")
                .doesNotContain("2468");
    }
}
