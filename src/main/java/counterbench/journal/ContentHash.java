package counterbench.journal;

import counterbench.facts.Canonical;
import counterbench.facts.FactRow;
import java.math.BigInteger;
import java.time.YearMonth;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/**
 * The hash over an entry's facts: the SHA-256 of every fact with its line, added up modulo 2^256.
 * Each fact bears its line, so changed, moved, missing and additional facts all change the sum,
 * while the facts may be read in whatever order the store holds them; an import of a million rows
 * is verified without sorting it.
 */
public final class ContentHash {
    private static final int WORDS = 4;

    private final Sha256 sha;
    private final long[] sum = new long[WORDS];
    private int count;

    /** Nothing yet; the digest may serve many sums, one after the other. */
    public ContentHash(Sha256 sha) {
        this.sha = sha;
    }

    /** Adds the fact that stands on a line, booked in a month if it has one. */
    public void add(int line, @Nullable YearMonth booked, FactRow row) {
        addDigest(sha.of(line + "|" + (booked == null ? "" : booked) + "|" + Canonical.row(row)));
        count++;
    }

    private void addDigest(byte[] digest) {
        long carry = 0;
        for (int i = WORDS - 1; i >= 0; i--) {
            long word = wordAt(digest, i * Long.BYTES);
            long partial = sum[i] + word;
            long total = partial + carry;
            carry =
                    (Long.compareUnsigned(partial, word) < 0 ? 1L : 0L)
                            + (Long.compareUnsigned(total, partial) < 0 ? 1L : 0L);
            sum[i] = total;
        }
    }

    private static long wordAt(byte[] bytes, int offset) {
        long word = 0;
        for (int i = 0; i < Long.BYTES; i++) {
            word = (word << 8) | (bytes[offset + i] & 0xffL);
        }
        return word;
    }

    /** How many facts were added. */
    public int count() {
        return count;
    }

    /** The sum so far in 64 lower-case hexadecimal digits. */
    public String hex() {
        StringBuilder text = new StringBuilder(64);
        for (long word : sum) {
            text.append(HexFormat.of().toHexDigits(word));
        }
        return text.toString();
    }

    /** The sum as a number, for checking against plain arithmetic. */
    BigInteger value() {
        return new BigInteger(hex(), 16);
    }
}
