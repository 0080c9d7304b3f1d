package counterbench.shell.labels;

import counterbench.printing.Paper;
import counterbench.shell.Invocation;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.Parameter;
import counterbench.shell.Readings;
import java.nio.file.Path;

/** What every command that prints labels takes. */
final class LabelOptions {
    static final Option<Path> TO =
            Option.of(
                    "to",
                    "FILE",
                    Readings.PATH,
                    "the PDF file or its folder; exports in the home folder unless said");
    static final Option<Boolean> REPLACE = Option.flag("replace", "write over a file of that name");
    static final Option<Paper> PAPER =
            Option.of(
                    "paper",
                    "PAPER",
                    Readings.oneOf(Paper.class),
                    "letter (30 labels a sheet, unless said otherwise) or a4 (24)");
    private static final Option<Long> SKIP =
            Option.of(
                    "skip",
                    "NUMBER",
                    Readings.WHOLE_NUMBER,
                    "places of the first sheet that are used up already");
    private static final Option<Long> COPIES =
            Option.of("copies", "NUMBER", Readings.WHOLE_NUMBER, "labels of each; 1 unless said");
    private static final long MOST_COPIES = 300;

    private LabelOptions() {}

    static Parameter<?>[] all() {
        return new Parameter<?>[] {COPIES, PAPER, SKIP, TO, REPLACE, Options.SITE};
    }

    static int copies(Invocation in) {
        return within(in, COPIES, 1, 1, MOST_COPIES);
    }

    static int skip(Invocation in, Paper paper) {
        return within(in, SKIP, 0, 0, paper.labels() - 1L);
    }

    private static int within(
            Invocation in, Option<Long> option, long usual, long least, long most) {
        long said = in.find(option).orElse(usual);
        if (said < least || said > most) {
            throw in.wrong(
                    option.label() + " \"" + said + "\" is not between " + least + " and " + most);
        }
        return (int) said;
    }
}
