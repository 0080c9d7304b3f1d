package counterbench.shell;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Splits a line into words the way people expect: {@code 'as it stands'}, {@code "with \" inside"},
 * {@code back\ slash}, and {@code # a comment} where a word could begin.
 */
public final class Tokenizer {
    private final List<String> words = new ArrayList<>();
    private final String line;
    private int at;
    private @Nullable StringBuilder word;

    private Tokenizer(String line) {
        this.line = line;
    }

    /**
     * The words of a line.
     *
     * @throws UsageError if a quote is not closed
     */
    public static List<String> split(String line) {
        return new Tokenizer(line).words();
    }

    private List<String> words() {
        while (at < line.length() && !commentBegins()) {
            char c = line.charAt(at++);
            if (Character.isWhitespace(c)) {
                endWord();
            } else if (c == '\'' || c == '"') {
                quoted(c);
            } else {
                begunWord().append(c == '\\' && at < line.length() ? line.charAt(at++) : c);
            }
        }
        endWord();
        return List.copyOf(words);
    }

    private boolean commentBegins() {
        return word == null && line.charAt(at) == '#';
    }

    private void quoted(char quote) {
        StringBuilder text = begunWord();
        for (; at < line.length(); at++) {
            char c = line.charAt(at);
            if (c == quote) {
                at++;
                return;
            }
            text.append(c == '\\' && quote == '"' && escapes() ? line.charAt(++at) : c);
        }
        throw new UsageError(
                "the quote " + quote + " is not closed; put another one at the end of its text");
    }

    private boolean escapes() {
        return at + 1 < line.length() && "\"\\".indexOf(line.charAt(at + 1)) >= 0;
    }

    private StringBuilder begunWord() {
        StringBuilder begun = word == null ? new StringBuilder() : word;
        word = begun;
        return begun;
    }

    private void endWord() {
        if (word != null) {
            words.add(word.toString());
            word = null;
        }
    }
}
