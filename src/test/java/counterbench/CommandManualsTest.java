package counterbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import counterbench.home.Surroundings;
import counterbench.shell.Argument;
import counterbench.shell.BaseCommand;
import counterbench.shell.CommandSet;
import counterbench.shell.Commands;
import counterbench.shell.LineParser;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;

/** What every command of the program says of itself, whichever feature it comes from. */
class CommandManualsTest {
    @TempDir static Path folder;

    private final AnnotationConfigApplicationContext parts =
            Counterbench.start(
                    new Surroundings(
                            Map.of("COUNTERBENCH_HOME", folder.resolve("none").toString()), folder),
                    InstantSource.system());
    private final Commands commands = parts.getBean(Commands.class);

    @AfterEach
    void close() {
        parts.close();
    }

    @Test
    void no_two_commands_share_a_name() {
        int made =
                parts.getBeanProvider(CommandSet.class).stream()
                        .mapToInt(set -> set.commands().size())
                        .sum();
        assertThat(commands.all()).hasSize(made);
    }

    @Test
    void making_the_commands_does_not_open_the_home() {
        assertThat(folder.resolve("none")).doesNotExist();
    }

    @Test
    void a_purpose_is_one_line_that_begins_with_a_verb_and_does_not_end_with_a_stop() {
        for (BaseCommand command : commands.all()) {
            assertThat(command.manual().purpose())
                    .as(command.getName())
                    .matches("[A-Z][^\\n]{3,70}[^.]");
        }
    }

    @Test
    void a_page_is_broken_between_words_for_a_terminal_of_eighty_signs() {
        for (BaseCommand command : commands.all()) {
            List<String> examples = command.manual().examples();
            assertThat(command.getHelp().lines())
                    .as(command.getName())
                    .filteredOn(line -> !examples.contains(line.strip()))
                    .allMatch(line -> line.length() <= 80);
        }
    }

    @Test
    void every_example_is_a_line_that_the_command_takes() {
        LineParser parser = new LineParser(commands);
        for (BaseCommand command : commands.all()) {
            for (String example : command.manual().examples()) {
                assertThat(example).startsWith(command.getName());
                assertThatCode(() -> command.check(parser.parse(example)))
                        .as(example)
                        .doesNotThrowAnyException();
            }
        }
    }

    @Test
    void arguments_that_may_be_left_out_or_repeated_stand_last() {
        for (BaseCommand command : commands.all()) {
            List<Argument<?>> arguments = command.manual().arguments();
            for (int i = 1; i < arguments.size(); i++) {
                assertThat(arguments.get(i - 1).repeatable()).as(command.getName()).isFalse();
                assertThat(arguments.get(i - 1).required() || !arguments.get(i).required())
                        .as(command.getName())
                        .isTrue();
            }
        }
    }
}
