package counterbench.shell.console;

import java.util.List;
import org.jline.reader.CompletingParsedLine;

/** A line that is one word, whatever it holds. */
record WholeLine(String line, int cursor) implements CompletingParsedLine {
    @Override
    public String word() {
        return line;
    }

    @Override
    public int wordCursor() {
        return cursor;
    }

    @Override
    public int wordIndex() {
        return 0;
    }

    @Override
    public List<String> words() {
        return List.of(line);
    }

    @Override
    public CharSequence escape(CharSequence candidate, boolean complete) {
        return candidate;
    }

    @Override
    public int rawWordCursor() {
        return cursor;
    }

    @Override
    public int rawWordLength() {
        return line.length();
    }
}
