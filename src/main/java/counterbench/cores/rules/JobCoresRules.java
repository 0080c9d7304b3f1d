package counterbench.cores.rules;

import counterbench.cores.JobCoresFacts;
import counterbench.judgement.Judge;
import java.util.List;

/** The rules that judge the cores of a job together. */
public final class JobCoresRules {
    /** All of them. */
    public static final List<Judge<JobCoresFacts>> ALL = List.of(new CoreMissing());

    private JobCoresRules() {}
}
