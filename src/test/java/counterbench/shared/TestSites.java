package counterbench.shared;

import java.time.ZoneId;
import java.util.Currency;

/** Invented sites for tests. */
public final class TestSites {
    /** A garage in a zone whose clocks change in March and November. */
    public static final Site NORTH =
            new Site(
                    1,
                    "NORTH",
                    "North garage",
                    ZoneId.of("America/Chicago"),
                    Currency.getInstance("USD"),
                    Site.Patience.USUAL);

    private TestSites() {}
}
