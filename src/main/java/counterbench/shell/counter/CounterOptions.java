package counterbench.shell.counter;

import counterbench.shared.Quantity;
import counterbench.shell.Argument;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import java.math.BigDecimal;
import java.time.LocalDate;

/** Options and arguments that commands of the parts counter share. */
final class CounterOptions {
    static final Argument<String> KIT =
            Argument.of("KIT", Scanned.TEXT, "the kit's serial, or a scan of its label");
    static final Argument<String> KITS =
            Argument.of("KIT", Scanned.TEXT, "serials of kits, or scans of their labels")
                    .asRepeatable();
    static final Argument<String> JOB =
            Argument.of("JOB", Scanned.TEXT, "the job, or a scan of its label");
    static final Argument<String> PART =
            Argument.of("PART", Scanned.TEXT, "the part number, or a scan of a label");
    static final Argument<Quantity> QUANTITY =
            Argument.of("QUANTITY", Readings.QUANTITY, "how many pieces, or how many mL or g");
    static final Option<String> LOT = Option.of("lot", "LOT", Readings.TEXT, "the lot");
    static final Option<LocalDate> EXPIRES =
            Option.of("expires", "DAY", Readings.DAY, "the last usable day");
    static final Option<BigDecimal> COST =
            Option.of("cost", "AMOUNT", Readings.EXACT, "what one cost");
    static final Option<String> DOCUMENT =
            Option.of("document", "NUMBER", Readings.TEXT, "the delivery note or other paper");
    static final Option<String> REASON =
            Option.of("reason", "TEXT", Readings.TEXT, "why, in a few words");
    static final Option<String> TO =
            Option.of("to", "SITE", Readings.TEXT, "the site that it goes to").asRequired();
    static final Option<String> FROM =
            Option.of("from", "SITE", Readings.TEXT, "the site that sent it").asRequired();

    private CounterOptions() {}
}
