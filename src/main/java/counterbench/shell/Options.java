package counterbench.shell;

import counterbench.shell.print.Format;

/** Options that many commands share, so that they mean the same everywhere. */
public final class Options {
    /** How rows are written. Part of every command that prints rows. */
    public static final Option<Format> FORMAT =
            Option.of(
                    "format",
                    "FORMAT",
                    Readings.oneOf(Format.class),
                    "table (unless said otherwise), json or csv");

    /** Which site is meant, where the store has several. */
    public static final Option<String> SITE =
            Option.of("site", "SITE", Readings.TEXT, "which site, where the store has several");

    private Options() {}
}
