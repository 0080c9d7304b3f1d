package counterbench.review.store;

import counterbench.judgement.Finding;
import java.time.Instant;
import java.util.List;

/**
 * Takes what a judging finds, and in which places that takes the place of what was found before.
 */
interface Outcome {
    /** Everything that was found before goes. */
    default void replaceAll() {}

    /** What was found of a job before goes. */
    default void replaceJob(int jobNo) {}

    /** What was found before in a section of what belongs to no job goes. */
    default void replaceSection(String section) {}

    /** Takes what was found of a job. */
    void add(int jobNo, List<Finding> found);

    /** Takes what was found in a section. */
    void add(String section, List<Finding> found);

    /** Takes the moment at which a job's outcome changes by itself; of several, the first. */
    default void changesAt(int jobNo, Instant moment) {}
}
