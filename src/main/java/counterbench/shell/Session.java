package counterbench.shell;

import counterbench.people.Person;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Who sits here and at which site, from one command to the next. */
public final class Session {
    private @Nullable Person person;
    private @Nullable String site;
    private boolean leaving;
    private boolean debugging;

    /** Who is signed in. */
    public Optional<Person> person() {
        return Optional.ofNullable(person);
    }

    /** Somebody has signed in. */
    public void signIn(Person somebody) {
        person = somebody;
    }

    /** Nobody is signed in any more. */
    public void signOut() {
        person = null;
    }

    /** The site chosen here. */
    public Optional<String> site() {
        return Optional.ofNullable(site);
    }

    /** Chooses a site. */
    public void choose(String chosen) {
        site = chosen;
    }

    /** Asks the shell or script to end after the running command. */
    public void leave() {
        leaving = true;
    }

    /** Whether somebody asked to leave. */
    public boolean isLeaving() {
        return leaving;
    }

    /** Shows stack traces from now on. */
    public void debug() {
        debugging = true;
    }

    /** Whether stack traces are shown. */
    public boolean isDebugging() {
        return debugging;
    }
}
