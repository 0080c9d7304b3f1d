package counterbench.shell;

import java.util.List;

/**
 * What a person has typed so far when asking for completion.
 *
 * @param words the words after the command's name, the begun one last
 * @param begun the begun value, perhaps empty
 */
public record Completing(List<String> words, String begun) {
    public Completing {
        words = List.copyOf(words);
    }
}
