package counterbench.shared;

/** What long work says of itself while it runs, and where it learns that it should stop. */
public interface Progress {
    /** Shows nothing and never stops the work. */
    Progress SILENT =
            new Progress() {
                @Override
                public void begin(String what, long total) {}

                @Override
                public void step(long count) {}
            };

    /**
     * A piece of work begins.
     *
     * @param what what is done, such as {@code reading uses.csv}
     * @param total how many steps it has; 0 where nobody knows
     */
    void begin(String what, long total);

    /**
     * Some more steps are done.
     *
     * @throws Interrupted if a person asked the work to stop
     */
    void step(long count);
}
