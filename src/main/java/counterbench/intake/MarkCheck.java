package counterbench.intake;

import counterbench.campaign.Step;
import counterbench.campaign.StepKind;
import counterbench.facts.FactRow;
import counterbench.shared.units.Unit;
import counterbench.shared.units.Units;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Checks rows of {@code marks} against the step that they name, in any revision of the job's
 * campaign.
 */
final class MarkCheck {
    private final Names names;

    MarkCheck(Names names) {
        this.names = names;
    }

    void check(FactRow row, Complaints complaints) {
        @Nullable String job = row.text("job");
        @Nullable String id = row.text("step");
        Optional<String> campaign = job == null ? Optional.empty() : names.campaignOf(job);
        if (campaign.isEmpty() || id == null) {
            return;
        }
        List<Step> steps =
                names.revisions(campaign.get()).stream().flatMap(p -> p.step(id).stream()).toList();
        if (steps.isEmpty()) {
            complaints.of(
                    "step",
                    "campaign " + campaign.get() + " has no such step",
                    "name a step of its pack: campaign show " + campaign.get());
        } else if (steps.stream().noneMatch(step -> fits(step, row, complaints))) {
            // The newest revision that has the step speaks for it.
            checkAgainst(steps.get(steps.size() - 1), row, complaints);
        }
    }

    /** Which revision the job is judged by is known once it is completed; until then any may be. */
    private static boolean fits(Step step, FactRow row, Complaints complaints) {
        Complaints ofStep = complaints.anew();
        checkAgainst(step, row, ofStep);
        return ofStep.isEmpty();
    }

    private static void checkAgainst(Step step, FactRow row, Complaints complaints) {
        boolean measures = step.kind() == StepKind.TORQUE || step.kind() == StepKind.READING;
        if (measures) {
            RowCheck.needed(row, "value", "write what was read", complaints);
        }
        if (step.kind() == StepKind.WAIT) {
            RowCheck.needed(row, "minutes", "write how long it was", complaints);
            RowCheck.positive(row, "minutes", complaints);
        }
        checkUnit(step, row, complaints);
        checkFastener(step, row, complaints);
    }

    private static void checkUnit(Step step, FactRow row, Complaints complaints) {
        @Nullable String said = row.text("unit");
        if (said == null || step.unit() == null) {
            return;
        }
        Optional<Unit> unit = Units.parse(said);
        Optional<Unit> wanted = Units.parse(step.unit());
        if (unit.isEmpty()) {
            complaints.of("unit", "is no unit that is known", "write " + step.unit());
        } else if (wanted.isPresent() && unit.get().measures() != wanted.get().measures()) {
            complaints.of(
                    "unit",
                    "the step is read in " + step.unit(),
                    "write " + step.unit() + " or a unit of the same kind");
        }
    }

    private static void checkFastener(Step step, FactRow row, Complaints complaints) {
        @Nullable Long fastener = row.whole("fastener");
        if (fastener == null && step.fasteners() > 1) {
            complaints.of(
                    "fastener",
                    "is empty, and the step has " + step.fasteners(),
                    "write which, from 1 to " + step.fasteners());
        } else if (fastener != null && (fastener < 1 || fastener > step.fasteners())) {
            complaints.of(
                    "fastener",
                    "the step has " + step.fasteners(),
                    "write a number from 1 to " + step.fasteners());
        }
    }
}
