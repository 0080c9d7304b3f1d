package counterbench.acts.bench;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Holding;
import counterbench.acts.JobState;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Quantity;
import counterbench.stock.Source;
import counterbench.stock.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Puts everything of a kit that still lies on a job's bench back into its box. */
public record PutBackKit(String job, String kit, @Nullable String reason, Stamp stamp)
        implements Act {
    @Override
    public FactKind makes() {
        return FactKind.USES;
    }

    @Override
    public Named named() {
        return Named.job(job).withKit(kit);
    }

    @Override
    public Decision decide(Situation situation) {
        JobState state = situation.job(job);
        Workplace place =
                Workplace.of(situation, state, stamp, "put back kit " + kit + " of job " + job);
        List<FactRow> rows = new ArrayList<>();
        for (Holding holding : state.benchHoldings()) {
            if (holding.source().equals(Source.kit(kit))) {
                row(state, holding).ifPresent(rows::add);
            }
        }
        if (rows.isEmpty()) {
            throw place.refused(
                    "nothing of it lies on the job's bench",
                    "job show " + job + " says what does, kit show " + kit + " where the kit is");
        }
        return new Decision(rows, List.of());
    }

    private Optional<FactRow> row(JobState state, Holding holding) {
        Quantity free = state.freeOnBench(holding.part(), holding.source(), stamp.at());
        return free.isPositive()
                ? Optional.of(
                        Hardware.of(job, holding.part(), free)
                                .row(stamp, Use.Condition.PUT_BACK, free)
                                .with("kit", kit)
                                .with("reason", reason))
                : Optional.empty();
    }
}
