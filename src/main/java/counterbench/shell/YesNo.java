package counterbench.shell;

import java.util.Locale;
import java.util.Optional;

/** Something that a person at the terminal is asked before it is done. */
public final class YesNo {
    private YesNo() {}

    /**
     * Asks until the answer is yes or no. A bare Enter is no answer, since a scanner types one,
     * too; no more lines mean no.
     *
     * @param question with its question mark
     */
    public static boolean of(Invocation in, String question) {
        while (true) {
            Optional<String> answer =
                    in.ask(question + " Type yes or no: ")
                            .map(typed -> typed.strip().toLowerCase(Locale.ROOT));
            if (answer.isEmpty() || answer.get().equals("no") || answer.get().equals("n")) {
                return false;
            }
            if (answer.get().equals("yes") || answer.get().equals("y")) {
                return true;
            }
        }
    }
}
