package counterbench.intake;

import java.util.Set;

/** The claims that rows of a site may name: those that it has and those of the same import. */
public interface ClaimNames {
    /** Whether there is a claim of that number. */
    boolean isClaim(String claim);

    /** The claims for a job that the store holds, sorted. */
    Set<String> ofJob(String job);
}
