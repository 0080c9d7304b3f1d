package counterbench.shell;

import java.util.List;
import java.util.Optional;

/**
 * What a person has typed so far when asking for completion.
 *
 * @param words the words after the command's name, the begun one last
 * @param begun the begun value, perhaps empty
 * @param site the site that was chosen in the shell or by the environment
 */
public record Completing(List<String> words, String begun, Optional<String> site) {
    public Completing {
        words = List.copyOf(words);
    }
}
