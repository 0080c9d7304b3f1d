package counterbench.claims.matching;

import java.util.Locale;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;

/** How far two names are apart that should be one, in typing slips. */
final class Slips {
    /** Of names of that length and longer, two slips may be told; of shorter ones, one. */
    private static final int LONG = 10;

    private static final int TOO_FAR = 3;

    /** One letter put in, left out, changed, or two neighbours swapped, is one slip. */
    private static final DamerauLevenshteinDistance EDITS = new DamerauLevenshteinDistance(2);

    private Slips() {}

    /** The slips between two names, signs and letter case apart; three for names too far apart. */
    static int between(String one, String other) {
        String a = plain(one);
        String b = plain(other);
        int slips = EDITS.apply(a, b);
        boolean tellable = slips < 2 || Math.min(a.length(), b.length()) >= LONG;
        return slips >= 0 && tellable ? slips : TOO_FAR;
    }

    /** Letters and digits in upper case. */
    static String plain(String name) {
        return name.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
    }
}
