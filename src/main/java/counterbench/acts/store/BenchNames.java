package counterbench.acts.store;

import counterbench.acts.JobState;
import counterbench.acts.Named;
import counterbench.acts.bench.FitState;
import counterbench.acts.bench.Progress;
import counterbench.acts.bench.StepProgress;
import counterbench.campaign.Step;
import counterbench.db.Store;
import counterbench.job.Requirement;
import counterbench.journal.store.EntryReader;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Names to propose while somebody types about one job. */
public final class BenchNames {
    private final Optional<JobState> job;
    private final Instant now;

    /**
     * @param job the job; where there is none of that name, nothing is proposed
     */
    public BenchNames(Store store, Site site, String job) {
        this.now =
                store.read(
                        sql -> EntryReader.latestRecording(sql, site.no()).orElse(Instant.EPOCH));
        this.job = new ReadSituation(store).run(site, now, Named.job(job)).findJob(job);
    }

    /** Parts that lie on its bench. */
    public List<String> partsOnBench() {
        return job.map(j -> List.copyOf(j.onBench().keySet())).orElse(List.of());
    }

    /** Parts that it asks for or has on its vehicle. */
    public List<String> parts() {
        return job.stream()
                .flatMap(j -> FitState.of(j, now).stream())
                .map(FitState::requirement)
                .map(Requirement::part)
                .toList();
    }

    /** Kits that were issued to it. */
    public List<String> kits() {
        return job.map(JobState::kits).orElse(List.of());
    }

    /** Its steps, the open ones first. */
    public List<String> steps() {
        return job.stream()
                .flatMap(j -> Progress.of(j).steps().stream())
                .sorted(Comparator.comparing(StepProgress::isComplete))
                .map(step -> step.step().id())
                .toList();
    }

    /** The fasteners of one of its steps. */
    public List<String> fasteners(String step) {
        return job.stream()
                .flatMap(j -> Progress.of(j).step(step).stream())
                .map(StepProgress::step)
                .flatMap(BenchNames::fasteners)
                .toList();
    }

    private static Stream<String> fasteners(Step step) {
        return IntStream.rangeClosed(1, step.fasteners()).mapToObj(Integer::toString);
    }
}
