package counterbench.shell.month;

import counterbench.shared.Progress;
import counterbench.shared.Site;
import counterbench.shell.Invocation;
import java.util.function.LongConsumer;

/** Shows how many jobs have been gone through. */
public final class ReadJobs {
    private ReadJobs() {}

    /** Turns the number of jobs gone through so far into steps of progress. */
    public static LongConsumer shown(Invocation in, Site site) {
        Progress progress = in.progress();
        progress.begin("reading jobs of " + site.site(), 0);
        long[] before = {0};
        return jobs -> {
            progress.step(jobs - before[0]);
            before[0] = jobs;
        };
    }
}
