package counterbench.procedure.rules;

import counterbench.judgement.Judge;
import java.util.List;

/** All rules about the steps of the procedure, in the order of explanation. */
public final class ProcedureRules {
    /** Every judge. */
    public static final List<Judge<ProcedureFacts>> ALL =
            List.of(
                    new StepMissing(),
                    new StepEarly(),
                    new StepNotForVehicle(),
                    new TorqueCount(),
                    new TorqueOutside(),
                    new TorqueBorderline(),
                    new ReadingOutside(),
                    new WaitShort(),
                    new InstrumentOverdue());

    private ProcedureRules() {}
}
