package counterbench.oracle;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Plans the marks of a job as they should be, lets the fault change them, and writes them. */
final class MarkWriter {

    private final Office office;
    private final JobStory story;
    private final List<MarkPlan> plans = new ArrayList<>();

    MarkWriter(Office office, JobStory story) {
        this.office = office;
        this.story = story;
    }

    void write() {
        for (Pack.Step step : story.pack.steps()) {
            if (story.applies(step.when())) {
                plan(step);
            }
        }
        if (story.fault.isPresent()) {
            new MarkFaults(office, story, plans).apply();
        }
        plans.forEach(this::write);
    }

    private void plan(Pack.Step step) {
        int fasteners = step.kind().equals("torque") ? step.fasteners() : 1;
        boolean atOnce = office.dice.percent(20);
        Instant at = story.tick(office.dice.between(2, 6));
        for (int fastener = 1; fastener <= fasteners; fastener++) {
            MarkPlan plan = new MarkPlan(step, fastener, at);
            fill(plan);
            plans.add(plan);
            at = atOnce ? at : Office.plus(at, 1);
        }
        story.clock = at;
    }

    private void fill(MarkPlan plan) {
        switch (plan.step.kind()) {
            case "torque", "reading" -> {
                plan.value = inside(plan.step);
                plan.instrument = office.dice.percent(12) ? "" : instrument(plan);
                if (office.dice.percent(18)) {
                    plan.write(otherUnit(plan.unit));
                }
            }
            case "wait" -> plan.minutes = plan.step.minutes().multiply(new BigDecimal("1.5"));
            default -> {}
        }
    }

    /** A value in the middle half of the limits, or well above a lower limit that stands alone. */
    private BigDecimal inside(Pack.Step step) {
        BigDecimal low = MarkPlan.own(step, step.low());
        if (!step.riseFrom().isEmpty()) {
            return low.add(new BigDecimal("1.00"));
        }
        BigDecimal range = MarkPlan.own(step, step.high()).subtract(low);
        BigDecimal share = new BigDecimal(office.dice.between(30, 70)).movePointLeft(2);
        return low.add(range.multiply(share)).setScale(2, RoundingMode.HALF_UP);
    }

    private String instrument(MarkPlan plan) {
        if (plan.step.kind().equals("reading")) {
            return switch (plan.step.unit()) {
                case "rpm" -> "R-1";
                case "V" -> "M-1";
                case "kPa" -> "P-1";
                default -> "H-1";
            };
        }
        boolean small = plan.step.unit().equals("lbf·in");
        return small
                ? office.dice.pick(List.of("T-1", "T-6"))
                : office.dice.pick(List.of("T-1", "T-2", "T-3", "T-4", "T-6"));
    }

    private static String otherUnit(String unit) {
        return switch (unit) {
            case "N·m" -> "lbf·ft";
            case "lbf·in" -> "Nm";
            case "kPa" -> "psi";
            case "°C" -> "°F";
            default -> unit;
        };
    }

    private void write(MarkPlan plan) {
        boolean own = plan.unit.equals(plan.step.unit());
        boolean many = plan.step.kind().equals("torque") && plan.step.fasteners() > 1;
        String unit =
                plan.value == null || (own && office.dice.percent(60)) ? "" : spelt(plan.unit);
        office.out.row(
                "marks",
                "job",
                story.job,
                "step",
                plan.step.id(),
                "at",
                office.time(plan.at),
                "value",
                text(plan.value),
                "unit",
                unit,
                "fastener",
                many || (plan.value != null && office.dice.percent(10)) ? "" + plan.fastener : "",
                "minutes",
                text(plan.minutes),
                "instrument",
                plan.instrument,
                "by",
                office.technician(),
                "ref",
                office.ref("R"));
    }

    private String spelt(String unit) {
        return switch (unit) {
            case "N·m" -> office.dice.pick(List.of("N·m", "Nm", "N.m"));
            case "lbf·ft" -> office.dice.pick(List.of("lbf·ft", "lb-ft", "ft-lb"));
            case "lbf·in" -> office.dice.pick(List.of("lbf·in", "in-lb"));
            default -> unit;
        };
    }

    private static String text(BigDecimal value) {
        return value == null ? "" : value.stripTrailingZeros().toPlainString();
    }
}
