package counterbench;

import counterbench.home.Home;
import counterbench.home.Surroundings;
import counterbench.people.SignIn;
import counterbench.shell.Circumstances;
import counterbench.shell.CommandSet;
import counterbench.shell.Commands;
import counterbench.shell.Entrance;
import counterbench.shell.Runner;
import counterbench.shell.Session;
import counterbench.shell.Stop;
import counterbench.shell.builtin.ExitCommand;
import counterbench.shell.builtin.HelpCommand;
import counterbench.shell.builtin.VersionCommand;
import counterbench.shell.console.Conversation;
import counterbench.shell.console.PromptText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.InstantSource;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.shell.core.command.CommandRegistry;

/** Puts the shell together: its circumstances, its runner and the commands about itself. */
@Configuration(proxyBeanMethods = false)
class ShellWiring {
    @Bean
    Home home(Surroundings surroundings) {
        return Home.of(surroundings);
    }

    @Bean
    Circumstances circumstances(
            Surroundings surroundings,
            ObjectProvider<Home> home,
            InstantSource clock,
            ObjectProvider<SignIn> signIn) {
        return new Circumstances(
                surroundings, home::getObject, clock, new Session(), new Stop(), signIn::getObject);
    }

    @Bean
    CommandRegistry commandRegistry(ObjectProvider<CommandSet> sets) {
        CommandRegistry registry = new CommandRegistry();
        sets.orderedStream()
                .flatMap(set -> set.commands().stream())
                .forEach(registry::registerCommand);
        return registry;
    }

    @Bean
    Commands commands(CommandRegistry registry) {
        return new Commands(registry);
    }

    @Bean
    Runner runner(Commands commands) {
        return new Runner(commands);
    }

    @Bean
    Entrance entrance(
            Runner runner, Circumstances circumstances, ObjectProvider<Conversation> shell) {
        return new Entrance(runner, circumstances, shell::getObject);
    }

    @Bean
    Conversation conversation(Commands commands, Circumstances circumstances, PromptText prompt) {
        return new Conversation(commands, circumstances, prompt, ShellWiring::terminal);
    }

    private static Terminal terminal() {
        try {
            return TerminalBuilder.builder().system(true).build();
        } catch (IOException e) {
            throw new UncheckedIOException("the terminal cannot be opened", e);
        }
    }

    @Bean
    CommandSet shellCommands(ObjectProvider<Commands> commands) {
        return new CommandSet(
                new HelpCommand(commands::getObject), new VersionCommand(), new ExitCommand());
    }
}
