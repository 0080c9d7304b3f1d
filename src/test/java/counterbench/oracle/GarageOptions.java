package counterbench.oracle;

/**
 * How a garage is written. {@code contested} adds stories for which the text leaves two readings
 * open; they are left out by default.
 */
public record GarageOptions(
        int jobs, int filesPerKind, boolean shuffled, int faultPercent, boolean contested) {

    /** One file a kind, rows as they come, about a quarter of the jobs odd in some way. */
    public static GarageOptions of(int jobs) {
        return new GarageOptions(jobs, 1, false, 27, false);
    }

    /** Several files a kind and rows in any order. */
    public GarageOptions scattered(int files) {
        return new GarageOptions(jobs, files, true, faultPercent, contested);
    }

    /** With the stories on which readers of the text may differ. */
    public GarageOptions withContested() {
        return new GarageOptions(jobs, filesPerKind, shuffled, faultPercent, true);
    }
}
