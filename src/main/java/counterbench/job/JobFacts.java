package counterbench.job;

/** Facts that concern one job. */
public interface JobFacts {
    /** The job, at the time of the judgement. */
    JudgedJob judged();
}
