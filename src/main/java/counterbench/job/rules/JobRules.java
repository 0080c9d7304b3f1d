package counterbench.job.rules;

import counterbench.job.JudgedJob;
import counterbench.judgement.Judge;
import java.util.List;

/** All rules about the hardware and the standing of a job, in the order of explanation. */
public final class JobRules {
    /** Every judge of hardware. */
    public static final List<Judge<HardwareFacts>> ALL =
            List.of(
                    new ReusedHardware(),
                    new HardwareShort(),
                    new HardwareOver(),
                    new MatchedSetSplit(),
                    new ExpiredWhenUsed(),
                    new KitUnknown(),
                    new KitOfAnotherJob(),
                    new LeftOnBench());

    /** Every judge of open jobs, which need no terms. */
    public static final List<Judge<JudgedJob>> OPEN = List.of(new JobIdle());

    private JobRules() {}
}
