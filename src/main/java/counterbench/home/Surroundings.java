package counterbench.home;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * What the operating system says about whoever started the program.
 *
 * @param variables the environment's variables
 * @param userHome the folder of the person who is logged in to the machine
 */
public record Surroundings(Map<String, String> variables, Path userHome) {
    public Surroundings {
        variables = Map.copyOf(variables);
    }

    /** What this process was started with. */
    public static Surroundings ofThisProcess() {
        return new Surroundings(System.getenv(), Path.of(System.getProperty("user.home")));
    }

    /** A variable's value; a blank one counts as not set. */
    public Optional<String> variable(String name) {
        return Optional.ofNullable(variables.get(name)).filter(value -> !value.isBlank());
    }
}
