package counterbench.shell.claims;

import counterbench.shared.Refused;
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

    /**
     * The day that {@link #ON} says.
     *
     * @throws Refused if it has not come yet
     */
    static LocalDate on(Invocation in, LocalDate today, String verb) {
        LocalDate on = in.find(ON).orElse(today);
        if (on.isAfter(today)) {
            throw new Refused(
                    "--on \"" + on + "\"", "that day has not come yet", verb + " it on that day");
        }
        return on;
    }

    /** The moment as of which the desk is looked at. */
    static Instant asOf(Invocation in, Site site) {
        return in.find(AS_OF).map(time -> time.at(site.zone())).orElse(in.now());
    }
}
