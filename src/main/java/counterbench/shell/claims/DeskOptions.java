package counterbench.shell.claims;

import counterbench.shared.Site;
import counterbench.shared.WrittenTime;
import counterbench.shell.Invocation;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;

/** Options that commands of the warranty desk share. */
final class DeskOptions {
    static final Option<YearMonth> MONTH =
            Option.of(
                    "month",
                    "MONTH",
                    Readings.MONTH,
                    "only jobs completed in this month, such as 2026-03");
    static final Option<LocalDate> ON =
            Option.of("on", "DAY", Readings.DAY, "which day; today unless said");

    static final Option<WrittenTime> AS_OF =
            Option.of("as-of", "TIME", Readings.TIME, "as of when; now unless said");

    /** Within how many days a last day is worth a word. */
    static final int SOON = 7;

    private DeskOptions() {}

    /** The moment as of which the desk is looked at. */
    static Instant asOf(Invocation in, Site site) {
        return in.find(AS_OF).map(time -> time.at(site.zone())).orElse(in.now());
    }
}
