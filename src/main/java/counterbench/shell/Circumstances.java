package counterbench.shell;

import counterbench.home.Home;
import counterbench.home.Surroundings;
import counterbench.people.SignIn;
import java.time.InstantSource;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What every command finds around it.
 *
 * @param home the home folder; asked for only when needed, as its name may be no folder's
 * @param clock the one clock of the program
 * @param signIn checks who somebody is; asked for only when somebody signs in, as it opens the
 *     store
 */
public record Circumstances(
        Surroundings surroundings,
        Supplier<Home> home,
        InstantSource clock,
        Session session,
        Stop stop,
        Supplier<SignIn> signIn) {
    /** The site that was chosen in the shell, or else by the environment. */
    public Optional<String> site() {
        return session.site().or(() -> surroundings.variable(Invocation.SITE_VARIABLE));
    }
}
