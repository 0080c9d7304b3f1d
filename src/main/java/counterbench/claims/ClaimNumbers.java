package counterbench.claims;

import java.math.BigInteger;
import java.util.Collection;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The numbers of a site's claims: they go on as they have been. */
public final class ClaimNumbers {
    private static final Pattern NUMBERED = Pattern.compile("(.*?)([0-9]+)");

    private ClaimNumbers() {}

    private record Series(int count, BigInteger highest, int width) {
        Series and(Series other) {
            return new Series(
                    count + other.count, highest.max(other.highest), Math.max(width, other.width));
        }

        String next() {
            String digits = highest.add(BigInteger.ONE).toString();
            return "0".repeat(Math.max(width - digits.length(), 0)) + digits;
        }
    }

    /**
     * The number after the highest of the longest series.
     *
     * @param names all claims of the site
     * @param site the site's short name, with which a first claim begins
     */
    public static String next(Collection<String> names, String site) {
        Map<String, Series> series = new TreeMap<>();
        for (String name : names) {
            Matcher matcher = NUMBERED.matcher(name);
            if (matcher.matches()) {
                String digits = matcher.group(2);
                series.merge(
                        matcher.group(1),
                        new Series(1, new BigInteger(digits), digits.length()),
                        Series::and);
            }
        }
        return series.entrySet().stream()
                .max(Comparator.comparingInt((Map.Entry<String, Series> e) -> e.getValue().count()))
                .map(e -> e.getKey() + e.getValue().next())
                .orElse(site + "-0001");
    }
}
