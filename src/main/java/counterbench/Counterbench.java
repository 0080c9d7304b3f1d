package counterbench;

import counterbench.home.Surroundings;
import counterbench.shell.Entrance;
import java.time.InstantSource;
import java.util.List;
import org.springframework.boot.LazyInitializationBeanFactoryPostProcessor;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;

/** Starts the program: arguments in, exit code out. */
public final class Counterbench {
    /** Told where to log, the container need not try every log that there is. */
    private static final String LOG_PROPERTY = "org.apache.commons.logging.LogFactory";

    private static final String LOG = "org.apache.commons.logging.impl.Slf4jLogFactory";

    private Counterbench() {}

    /** Runs one command, or the shell where no words are given. */
    public static void main(String[] args) {
        System.exit(run(List.of(args)));
    }

    private static int run(List<String> words) {
        return run(words, InstantSource.system());
    }

    /** Runs the words, or the shell, by some clock; gives the exit code. */
    static int run(List<String> words, InstantSource clock) {
        try (AnnotationConfigApplicationContext parts =
                start(Surroundings.ofThisProcess(), clock)) {
            return parts.getBean(Entrance.class).enter(words).code();
        }
    }

    /**
     * Puts the program together without running anything. Parts are made when first asked for, so
     * that a command that does not need the store does not open it. Spring Boot's own start does
     * the same more slowly (DEVELOPERS.md has the figures).
     */
    static AnnotationConfigApplicationContext start(
            Surroundings surroundings, InstantSource clock) {
        System.setProperty(LOG_PROPERTY, LOG);
        AnnotationConfigApplicationContext parts = new AnnotationConfigApplicationContext();
        parts.addBeanFactoryPostProcessor(new LazyInitializationBeanFactoryPostProcessor());
        parts.registerBean(Surroundings.class, () -> surroundings);
        parts.registerBean(InstantSource.class, () -> clock);
        parts.register(Wiring.class);
        parts.refresh();
        return parts;
    }
}
