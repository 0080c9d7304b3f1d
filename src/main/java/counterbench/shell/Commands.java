package counterbench.shell;

import counterbench.shared.NearMatch;
import counterbench.shared.Visible;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.springframework.shell.core.command.CommandRegistry;

/** All commands that there are, by their names. */
public final class Commands {
    private static final int MOST_WORDS_OF_A_NAME = 2;

    private final CommandRegistry registry;
    private final SortedMap<String, BaseCommand> byName = new TreeMap<>();

    public Commands(CommandRegistry registry) {
        this.registry = registry;
        registry.getCommands().forEach(command -> add((BaseCommand) command));
    }

    private void add(BaseCommand command) {
        byName.put(command.getName(), command);
        command.getAliases().forEach(alias -> byName.put(alias, command));
    }

    CommandRegistry registry() {
        return registry;
    }

    /** The commands, by name. */
    public List<BaseCommand> all() {
        return byName.values().stream()
                .distinct()
                .sorted(Comparator.comparing(BaseCommand::getName))
                .toList();
    }

    /**
     * Says that there is no such command, and which one or which group of them was probably meant.
     */
    public String unknown(String written) {
        return "there is no command \""
                + Visible.text(written)
                + "\""
                + near(written).map(near -> "; did you mean " + near + "?").orElse("");
    }

    Optional<String> near(String written) {
        List<String> groups = all().stream().map(command -> command.words().get(0)).toList();
        return NearMatch.of(
                written, Stream.concat(byName.keySet().stream(), groups.stream()).toList());
    }

    /** The command of exactly that name or alias. */
    public Optional<BaseCommand> named(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /**
     * The command whose name the words begin with; of {@code kit} and {@code kit show}, the longer.
     */
    public Optional<Match> at(List<String> words) {
        for (int n = Math.min(MOST_WORDS_OF_A_NAME, words.size()); n > 0; n--) {
            BaseCommand command = byName.get(String.join(" ", words.subList(0, n)));
            if (command != null) {
                return Optional.of(new Match(command, n));
            }
        }
        return Optional.empty();
    }

    /** The commands whose names begin with that word, such as all that begin with {@code kit}. */
    public List<BaseCommand> under(String word) {
        return all().stream().filter(c -> c.getName().startsWith(word + " ")).toList();
    }

    /**
     * A command found at the beginning of a line.
     *
     * @param words how many words its name took
     */
    public record Match(BaseCommand command, int words) {}
}
