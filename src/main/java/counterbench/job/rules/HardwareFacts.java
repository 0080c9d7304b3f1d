package counterbench.job.rules;

import counterbench.campaign.PartUnit;
import counterbench.job.JobFacts;
import counterbench.job.JudgedJob;
import counterbench.job.OnVehicle;
import counterbench.job.Requirement;
import counterbench.job.Requirements;
import counterbench.stock.SourceOfUse;
import java.util.Map;
import java.util.Objects;

/** What the hardware rules judge: a job, what its campaign requires, and its goods. */
public final class HardwareFacts implements JobFacts {
    private final JudgedJob judged;
    private final Requirements requirements;
    private final JobGoods goods;
    private final SourceOfUse source;
    private final OnVehicle onVehicle;

    public HardwareFacts(JudgedJob judged, Requirements requirements, JobGoods goods) {
        this.judged = Objects.requireNonNull(judged, "judged");
        this.requirements = Objects.requireNonNull(requirements, "requirements");
        this.goods = Objects.requireNonNull(goods, "goods");
        this.source = SourceOfUse.ofIssues(goods.issues(), goods.kits(), goods.contents());
        this.onVehicle = OnVehicle.at(judged.until(), goods.uses(), requirements::packPart);
    }

    @Override
    public JudgedJob judged() {
        return judged;
    }

    /** What the pack requires for the job's vehicle. */
    public Requirements requirements() {
        return requirements;
    }

    /** What was issued to the job and what became of it. */
    public JobGoods goods() {
        return goods;
    }

    /** Which kit a use comes from. */
    public SourceOfUse source() {
        return source;
    }

    /** What is on the vehicle at completion; as of now for a job that goes on. */
    public OnVehicle onVehicle() {
        return onVehicle;
    }

    /** The unit of a part; each where nobody says. */
    PartUnit unitOf(String part) {
        Map<String, PartUnit> others = goods.units();
        return requirements
                .of(part)
                .map(Requirement::unit)
                .orElseGet(() -> others.getOrDefault(part, PartUnit.EACH));
    }

    /** A part's name and number, as messages say it. */
    String named(String part) {
        return requirements.of(part).map(Requirement::named).orElse(part);
    }
}
