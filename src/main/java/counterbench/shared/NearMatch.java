package counterbench.shared;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Proposes the word that somebody probably meant. */
public final class NearMatch {
    private NearMatch() {}

    /**
     * The known word nearest to the one written, letter case apart, if it is near enough: at most a
     * third of its letters away. Of equally near ones the one that differs only in letters that are
     * taken for figures, then the first in alphabetical order.
     */
    public static Optional<String> of(String written, Collection<String> known) {
        String plain = lower(written.strip());
        return known.stream()
                .filter(k -> Math.abs(k.length() - plain.length()) <= reach(k))
                .filter(k -> edits(plain, lower(k)) <= reach(k))
                .min(
                        Comparator.<String>comparingInt(k -> edits(plain, lower(k)))
                                .thenComparingInt(k -> edits(read(plain), read(lower(k))))
                                .thenComparing(k -> k));
    }

    private static int reach(String known) {
        return known.length() < 2 ? 0 : Math.max(1, known.length() / 3);
    }

    /**
     * How many single letters must be put in, left out, changed or swapped with their neighbour to
     * turn one word into the other (optimal string alignment distance).
     */
    public static int edits(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = Math.min(i, j) == 0 ? Math.max(i, j) : step(a, b, d, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int step(String a, String b, int[][] d, int i, int j) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        boolean swapped =
                i > 1
                        && j > 1
                        && a.charAt(i - 1) == b.charAt(j - 2)
                        && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
    }

    /** A word in lower case with the letters that are taken for figures as figures. */
    private static String read(String word) {
        return word.replace('o', '0').replace('i', '1').replace('l', '1');
    }

    private static String lower(String word) {
        return word.toLowerCase(Locale.ROOT);
    }
}
