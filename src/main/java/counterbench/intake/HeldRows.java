package counterbench.intake;

import counterbench.facts.Canonical;
import counterbench.facts.FactRow;
import counterbench.journal.Sha256;
import java.util.Map;

/**
 * Facts without a number of their own that earlier imports recorded, as counts of equal rows; so
 * that a sheet imported twice adds nothing, one that has grown adds what is new, and two equal rows
 * of one sheet both count. Rows are told apart by 64 bits of their SHA-256.
 */
public final class HeldRows {
    private final Sha256 sha = new Sha256();
    private final Map<Long, Integer> unmatched;
    private final Map<Long, Boolean> required;

    /**
     * @param unmatched an empty map, for how many rows of each are held and not matched yet
     * @param required an empty map, for what required cells say of rows that count
     */
    public HeldRows(Map<Long, Integer> unmatched, Map<Long, Boolean> required) {
        this.unmatched = unmatched;
        this.required = required;
    }

    /** What is known of a row. */
    public enum Outcome {
        /** The store holds it, and no other row of this import took its place. */
        KNOWN,
        /** The store does not hold it. */
        NEW,
        /** One that counts in the store is equal in its required cells only. */
        PROBABLE_CORRECTION
    }

    /**
     * Counts a row that the store holds.
     *
     * @param counts whether it was not taken back; what was taken back stays known, but another row
     *     may say the same better
     */
    public void hold(FactRow row, boolean counts) {
        unmatched.merge(key(withoutRef(row)), 1, Integer::sum);
        if (counts) {
            required.put(key(Canonical.requiredCells(row)), true);
        }
    }

    /** Judges a row of an import; each held row is matched once. */
    public Outcome match(FactRow row) {
        long key = key(withoutRef(row));
        Integer left = unmatched.get(key);
        if (left == null) {
            return required.containsKey(key(Canonical.requiredCells(row)))
                    ? Outcome.PROBABLE_CORRECTION
                    : Outcome.NEW;
        }
        if (left == 0) {
            return Outcome.NEW;
        }
        unmatched.put(key, left - 1);
        return Outcome.KNOWN;
    }

    /** Forgets all rows. */
    public void clear() {
        unmatched.clear();
        required.clear();
    }

    private static String withoutRef(FactRow row) {
        return Canonical.row(row.ref() == null ? row : new FactRow(row.kind(), row.values(), null));
    }

    private long key(String text) {
        byte[] digest = sha.of(text);
        long key = 0;
        for (int i = 0; i < Long.BYTES; i++) {
            key = (key << 8) | (digest[i] & 0xffL);
        }
        return key;
    }
}
