package counterbench.shared;

/** A word of a command line that is proposed or written down, as it can be typed. */
public final class TypedWord {
    private TypedWord() {}

    /** In double quotes, with those in it escaped. */
    public static String quoted(String word) {
        return '"' + word.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
