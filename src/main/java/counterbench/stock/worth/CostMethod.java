package counterbench.stock.worth;

import counterbench.stock.CostLayers;

/** A usual way to say what the pieces cost that left, and those that stayed. */
public enum CostMethod {
    /** Specific identification where a lot is named, first in first out otherwise: as claims do. */
    LOTS("by lot where one is named, else first in first out, as claims do") {
        @Override
        public CostFlow begin(Rounding rounding) {
            return new LayeredFlow(CostLayers.firstInFirstOut(), true);
        }
    },
    /** First in, first out; the same month by month as piece by piece. */
    FIFO("first in, first out") {
        @Override
        public CostFlow begin(Rounding rounding) {
            return new LayeredFlow(CostLayers.firstInFirstOut(), false);
        }
    },
    /** Last in, first out, at the time of each issue. */
    LIFO("last in, first out, at each issue") {
        @Override
        public CostFlow begin(Rounding rounding) {
            return new LayeredFlow(CostLayers.lastInFirstOut(), false);
        }
    },
    /** Last in, first out, once all of the month has come in. */
    LIFO_BY_MONTH("last in, first out, month by month") {
        @Override
        public CostFlow begin(Rounding rounding) {
            return new PeriodicFlow(LIFO.begin(rounding));
        }
    },
    /** The weighted average of the month: one unit cost for all that was there or came in. */
    AVERAGE("weighted average, month by month") {
        @Override
        public CostFlow begin(Rounding rounding) {
            return new PeriodicFlow(MOVING_AVERAGE.begin(rounding));
        }
    },
    /** The average of what is there at the time of each issue. */
    MOVING_AVERAGE("moving average, at each issue") {
        @Override
        public CostFlow begin(Rounding rounding) {
            return new MovingAverageFlow(rounding);
        }
    };

    private final String words;

    CostMethod(String words) {
        this.words = words;
    }

    /** What it is, in words. */
    public String words() {
        return words;
    }

    /** Begins with an empty store. */
    public abstract CostFlow begin(Rounding rounding);
}
