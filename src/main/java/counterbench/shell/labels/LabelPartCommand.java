package counterbench.shell.labels;

import counterbench.labels.Labelled;
import counterbench.labels.store.LabelBook;
import counterbench.shell.Argument;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.acts.LiveNames;
import java.time.LocalDate;
import java.util.List;

/** Prints labels for some of a part. */
public final class LabelPartCommand extends LabelCommand {
    private static final Argument<String> PART =
            Argument.of("PART", Readings.TEXT, "the part number");
    private static final Option<String> LOT =
            Option.of("lot", "LOT", Readings.TEXT, "the batch that it is of");
    private static final Option<LocalDate> EXPIRES =
            Option.of(
                    "expires",
                    "DAY",
                    Readings.DAY,
                    "the last day of use; that of the lot's receipt unless said");

    public LabelPartCommand(LabelPress press) {
        super(
                Manual.of("label part", Group.CORE_RACK, "Print labels of a part")
                        .takes(PART.completedBy(new LiveNames(press.store()).parts()), LOT, EXPIRES)
                        .takes(LabelOptions.all())
                        .example("label part QM-4475 --lot L-77 --expires 2026-12-31 --copies 10")
                        .note(
                                "The symbol says the part number (240), the lot (10) and the last"
                                        + " day of use (17)."),
                press);
    }

    @Override
    List<? extends Labelled> named(Invocation in, LabelBook book) {
        String part = in.get(PART);
        return List.of(
                KnownName.of(
                        book.part(part, in.find(LOT).orElse(null), in.find(EXPIRES).orElse(null)),
                        "part",
                        part,
                        "no pack, list or receipt knows it",
                        "see balance for the parts that there are",
                        () -> book.parts().keySet()));
    }
}
