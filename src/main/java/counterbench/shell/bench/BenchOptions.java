package counterbench.shell.bench;

import counterbench.acts.bench.Hardware;
import counterbench.shared.Quantity;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.Invocation;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.counter.Scanned;

/** Arguments and options that commands of the bench share. */
final class BenchOptions {
    static final Argument<String> JOB =
            Argument.of("JOB", Scanned.TEXT, "the job, or a scan of its label");
    static final Argument<String> PART =
            Argument.of("PART", Scanned.TEXT, "the part number, or a scan of a label");
    static final Argument<Quantity> QUANTITY =
            Argument.of(
                            "QUANTITY",
                            Readings.QUANTITY,
                            "how many pieces, one unless said, or how many mL or g")
                    .asOptional();
    static final Option<String> KIT =
            Option.of("kit", "KIT", Scanned.TEXT, "the kit that it is from");
    static final Option<String> LOT =
            Option.of("lot", "LOT", Readings.TEXT, "the lot, of a loose part");
    static final Option<String> REASON =
            Option.of("reason", "TEXT", Readings.TEXT, "why, in a few words");

    private BenchOptions() {}

    static String job(Invocation in, Site site) {
        return Scanned.job(in, site, in.get(JOB));
    }

    /** The hardware that the line names. */
    static Hardware hardware(Invocation in, Site site) {
        String part = in.get(PART);
        return new Hardware(
                job(in, site),
                Scanned.part(in, site, part),
                in.find(QUANTITY).orElse(null),
                in.find(KIT).map(kit -> Scanned.kit(in, site, kit)).orElse(null),
                in.find(LOT).orElse(null),
                Scanned.lot(in, site, part).orElse(null));
    }
}
