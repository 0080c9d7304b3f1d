package counterbench.month.store;

import counterbench.shared.Progress;
import java.util.function.LongConsumer;

/** Tells a progress how many jobs are done, by how many there are by now or by how many more. */
final class JobSteps implements LongConsumer {
    private final Progress progress;
    private long done;

    JobSteps(Progress progress, String what) {
        this.progress = progress;
        progress.begin(what, 0);
    }

    @Override
    public void accept(long jobs) {
        progress.step(jobs - done);
        done = jobs;
    }

    void add(long more) {
        accept(done + more);
    }
}
