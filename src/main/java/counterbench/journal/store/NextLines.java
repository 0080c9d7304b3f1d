package counterbench.journal.store;

import java.util.Arrays;
import java.util.Map;
import java.util.function.IntSupplier;

/**
 * The next free line of each job in one table, for the length of one act or import. An import can
 * bring a hundred thousand jobs, so those that it brings are counted in an array.
 */
final class NextLines {
    private static final int FEW = 64;

    private final Map<Integer, Integer> ofHeld;
    private int[] takenOfNew = new int[FEW];

    /**
     * @param ofHeld an empty map, to remember the lines of jobs that were there before
     */
    NextLines(Map<Integer, Integer> ofHeld) {
        this.ofHeld = ofHeld;
    }

    /**
     * The next line of a job that was there before.
     *
     * @param stored gives the first free one, when it is asked for the first time
     */
    int ofHeld(int jobNo, IntSupplier stored) {
        Integer known = ofHeld.get(jobNo);
        int next = known == null ? stored.getAsInt() : known;
        ofHeld.put(jobNo, next + 1);
        return next;
    }

    /**
     * The next line of a job that has none in the store.
     *
     * @param place of the job among the new ones, from 0
     */
    int ofNew(int place) {
        if (place >= takenOfNew.length) {
            takenOfNew = Arrays.copyOf(takenOfNew, Math.max(place + 1, 2 * takenOfNew.length));
        }
        return ++takenOfNew[place];
    }
}
