package counterbench.oracle;

import java.util.List;
import java.util.Random;

/** Seeded chance. */
final class Dice {

    private final Random random;

    Dice(long seed) {
        random = new Random(seed);
    }

    boolean percent(int percent) {
        return random.nextInt(100) < percent;
    }

    /** A whole number from low to high, both included. */
    int between(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    <T> T pick(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    Random random() {
        return random;
    }
}
