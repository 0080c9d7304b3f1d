package counterbench;

import counterbench.home.Home;
import counterbench.home.Surroundings;
import counterbench.people.SignIn;
import counterbench.shared.Refused;
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
import java.time.InstantSource;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.shell.core.command.CommandRegistry;

/** Puts the shell together: its circumstances, its runner and the commands about itself. */
@Configuration(proxyBeanMethods = false)
class ShellWiring {
    @Bean
    InstantSource clock() {
        return InstantSource.system();
    }

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
                surroundings,
                home::getObject,
                clock,
                new Session(),
                new Stop(),
                () -> signIn.getIfAvailable(() -> ShellWiring::nobody));
    }

    private static counterbench.people.Person nobody(String name, counterbench.people.Pin pin) {
        throw new Refused("sign-in of \"" + name + "\"", "there are no people", "");
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
    Entrance entrance(Runner runner, Circumstances circumstances) {
        return new Entrance(
                runner,
                circumstances,
                () -> {
                    throw new IllegalStateException("no shell");
                });
    }

    @Bean
    CommandSet shellCommands(ObjectProvider<Commands> commands) {
        return new CommandSet(
                new HelpCommand(commands::getObject), new VersionCommand(), new ExitCommand());
    }
}
