package counterbench.month.sheet;

import java.util.List;
import java.util.Locale;

/** The monthly workbooks. */
public enum BookKind {
    /** For the parts counter. */
    PARTS(
            "What parts and kits the site had, got, used and has left, and what its campaigns"
                    + " required. Made from the site's journal.",
            "Balances, kits and what expires are as at the end of the month; what still lies on"
                    + " benches and the findings are as of the time of the export.",
            List.of(
                    "What has expired, was dropped or was fitted before does not go on a vehicle,"
                            + " whatever a table says is in stock.")),
    /** For the warranty desk. */
    WARRANTY(
            "The month's claims, the jobs and the evidence behind them, the cores on their way"
                    + " back, and what was credited. Made from the site's journal.",
            "Cores are as at the end of the month; claims and findings are as of the time of the"
                    + " export.",
            List.of(
                    "How parts that are wet with fuel or oil may be shipped is the shipper's to"
                            + " check, every time."));

    private static final String FIRST =
            "No number and no verdict in this workbook is leave to drive a vehicle or to leave a"
                    + " step out. The maker's own procedure, local codes and licensed practice"
                    + " come first.";

    private final String purpose;
    private final String times;
    private final List<String> cautions;

    BookKind(String purpose, String times, List<String> cautions) {
        this.purpose = purpose;
        this.times = times;
        this.cautions = cautions;
    }

    /** What commands, layouts and files call it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What it is for, in a sentence or two. */
    String purpose() {
        return purpose;
    }

    /** As of when its sheets are. */
    String times() {
        return times;
    }

    /** What whoever reads it must bear in mind. */
    List<String> cautions() {
        return java.util.stream.Stream.concat(java.util.stream.Stream.of(FIRST), cautions.stream())
                .toList();
    }
}
