package counterbench.acts.bench;

import counterbench.acts.JobState;
import counterbench.acts.Parts;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.shared.Refused;
import counterbench.shared.Site;

/**
 * A job that somebody works on, at the time of the act.
 *
 * @param asked what was asked, as a refusal begins
 */
record Workplace(Situation situation, JobState job, Stamp stamp, String asked) {
    /**
     * The job, on which work may be recorded.
     *
     * @throws Refused if it has ended, or was opened later
     */
    static Workplace of(Situation situation, JobState job, Stamp stamp, String asked) {
        job.mustBeOpen(asked);
        if (job.job().openedAt().isAfter(stamp.at())) {
            throw new Refused(
                    asked,
                    "the job was opened later, at "
                            + situation.site().wallTime(job.job().openedAt()),
                    "say when it was with --at");
        }
        return new Workplace(situation, job, stamp, asked);
    }

    Site site() {
        return situation.site();
    }

    Parts parts() {
        return Parts.of(situation);
    }

    Refused refused(String because, String todo) {
        return new Refused(asked, because, todo);
    }
}
