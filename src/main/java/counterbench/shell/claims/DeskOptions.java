package counterbench.shell.claims;

import counterbench.shell.Option;
import counterbench.shell.Readings;
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

    /** Within how many days a last day is worth a word. */
    static final int SOON = 7;

    private DeskOptions() {}
}
