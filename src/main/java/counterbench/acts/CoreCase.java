package counterbench.acts;

import counterbench.campaign.CoreTerms;
import counterbench.cores.CoreHistory;
import counterbench.cores.DueCores;
import java.util.Optional;

/**
 * One core as it stands.
 *
 * @param job the job that it was removed on
 */
public record CoreCase(JobState job, CoreHistory core) {
    /** What the campaign asks of it, as far as that can be told. */
    public Optional<CoreTerms> terms() {
        return job.pack()
                .flatMap(pack -> new DueCores(pack, job.attributes()).termsOf(core.part()));
    }
}
