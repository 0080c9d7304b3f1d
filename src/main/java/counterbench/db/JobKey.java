package counterbench.db;

/**
 * The one BIGINT key of the tables in job order: site 10 bits, job 29, line 24. Rows of a job lie
 * together, and a range of keys is a site or a job.
 */
public final class JobKey {
    private static final int LINE_BITS = 24;
    private static final int JOB_BITS = 29;
    private static final long LINES = 1L << LINE_BITS;
    private static final long JOBS = 1L << JOB_BITS;

    private JobKey() {}

    /**
     * The key of a line of a job.
     *
     * @throws IllegalArgumentException if a number does not fit its bits
     */
    public static long of(int siteNo, int jobNo, int line) {
        if (siteNo < 1
                || siteNo > 1023
                || jobNo < 0
                || jobNo >= JOBS
                || line < 0
                || line >= LINES) {
            throw new IllegalArgumentException(
                    "no key for site " + siteNo + ", job " + jobNo + ", line " + line);
        }
        return ((long) siteNo << (LINE_BITS + JOB_BITS)) | ((long) jobNo << LINE_BITS) | line;
    }

    /** The first key that a job can have. */
    public static long first(int siteNo, int jobNo) {
        return of(siteNo, jobNo, 0);
    }

    /** The last key that a job can have. */
    public static long last(int siteNo, int jobNo) {
        return of(siteNo, jobNo, (int) (LINES - 1));
    }

    /** The first key of a site. */
    public static long firstOf(int siteNo) {
        return of(siteNo, 0, 0);
    }

    /** The last key of a site. */
    public static long lastOf(int siteNo) {
        return of(siteNo, (int) (JOBS - 1), (int) (LINES - 1));
    }

    /** The job's number in a key. */
    public static int jobNo(long key) {
        return (int) ((key >>> LINE_BITS) & (JOBS - 1));
    }

    /** The site's number in a key. */
    public static int siteNo(long key) {
        return (int) (key >>> (LINE_BITS + JOB_BITS));
    }

    /** The line in a key. */
    public static int line(long key) {
        return (int) (key & (LINES - 1));
    }
}
