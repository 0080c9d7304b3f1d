package counterbench.people;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How often a wrong PIN was typed for a person since the last right one. From the fifth on one has
 * to wait, each time twice as long, but never more than an hour.
 *
 * @param failures wrong PINs in a row
 * @param waitUntil until when no PIN is looked at, if one has to wait
 */
public record Tries(int failures, @Nullable Instant waitUntil) {
    /** No wrong PIN yet. */
    public static final Tries NONE = new Tries(0, null);

    private static final int FREE = 5;
    private static final Duration FIRST_WAIT = Duration.ofSeconds(30);
    private static final Duration LONGEST_WAIT = Duration.ofHours(1);
    private static final int MOST_DOUBLINGS = 7;

    /** After one more wrong PIN. */
    public Tries failed(Instant now) {
        int count = Math.min(failures, Integer.MAX_VALUE - 1) + 1;
        return new Tries(count, count < FREE ? null : now.plus(waitAfter(count)));
    }

    private static Duration waitAfter(int count) {
        int doublings = Math.min(count - FREE, MOST_DOUBLINGS);
        Duration wait = FIRST_WAIT.multipliedBy(1L << doublings);
        return wait.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : wait;
    }

    /**
     * How long one has to wait yet; zero where one need not. A clock that was set back makes nobody
     * wait longer than the longest wait.
     */
    public Duration left(Instant now) {
        Instant until = waitUntil;
        if (until == null || !until.isAfter(now)) {
            return Duration.ZERO;
        }
        Duration left = Duration.between(now, until);
        return left.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : left;
    }
}
