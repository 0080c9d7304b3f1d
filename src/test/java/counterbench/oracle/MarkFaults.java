package counterbench.oracle;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** What faults change about the planned marks of a job. */
final class MarkFaults {

    private static final BigDecimal CENT = new BigDecimal("0.01");

    private final Office office;
    private final JobStory story;
    private final List<MarkPlan> plans;

    MarkFaults(Office office, JobStory story, List<MarkPlan> plans) {
        this.office = office;
        this.story = story;
        this.plans = plans;
    }

    void apply() {
        switch (story.fault.orElseThrow()) {
            case STEP_MISSING -> drop(office.dice.pick(plans).step.id());
            case RISE_BASE_MISSING -> drop("closed");
            case STEP_EARLY -> secondStep(-1);
            case STEP_SAME_TIME -> secondStep(0);
            case STEP_EARLY_FASTENERS, STEP_EARLY_INCOMPLETE -> amongFasteners();
            case STEP_NOT_FOR_VEHICLE -> notForVehicle();
            case TORQUE_COUNT -> plans.remove(torque(p -> true));
            case TORQUE_OUTSIDE -> set(torque(p -> true), limit(true).add(CENT));
            case TORQUE_ON_LIMIT -> set(torque(p -> true), limit(office.dice.percent(50)));
            case TORQUE_CORRECTED -> again(limit(false).subtract(CENT), null);
            case TORQUE_WORSENED -> again(null, limit(true).add(CENT));
            case TORQUE_BORDERLINE -> borderline("T-1", limit(true).subtract(CENT));
            case TORQUE_BORDERLINE_EXACT -> borderlineExact();
            case READING_OUTSIDE, READING_ON_LIMIT -> reading();
            case RISE_SHORT -> rise("3.41");
            case RISE_EXACT -> rise("3.42");
            case WAIT_SHORT -> wait(BigDecimal.ONE.movePointLeft(1));
            case WAIT_EXACT -> wait(of("wait").step.minutes());
            case WAIT_MARKED_AGAIN -> waitAgain();
            case INSTRUMENT_UNKNOWN -> instrument("T-99");
            case INSTRUMENT_OVERDUE -> instrument(office.dice.pick(List.of("T-5", "T-8")));
            case INSTRUMENT_NEW -> instrument(office.dice.pick(List.of("T-7", "T-9")));
            case INSTRUMENT_DUE_TODAY -> dueToday();
            default -> {}
        }
    }

    private void drop(String step) {
        plans.removeIf(p -> p.step.id().equals(step));
    }

    /** Moves the first marks of a step against the completion of the step before it. */
    private void secondStep(int minutes) {
        MarkPlan later =
                first(p -> p.step.after().size() == 1 && firstOf(p.step.after().get(0)).isPresent())
                        .orElseThrow();
        String before = later.step.after().get(0);
        MarkPlan complete =
                plans.stream()
                        .filter(p -> p.step.id().equals(before))
                        .reduce((a, b) -> b)
                        .orElseThrow();
        plans.stream()
                .filter(p -> p.step.id().equals(later.step.id()) && p.fastener == 1)
                .forEach(p -> p.at = Office.plus(complete.at, minutes));
    }

    /** A step marked when only some of the fasteners before it had been read. */
    private void amongFasteners() {
        MarkPlan torque = torque(p -> p.step.fasteners() > 1);
        List<MarkPlan> readings =
                new ArrayList<>(plans.stream().filter(p -> p.step.equals(torque.step)).toList());
        for (int i = 0; i < readings.size(); i++) {
            readings.get(i).at = Office.plus(readings.get(0).at, i);
        }
        first(p -> p.step.after().contains(torque.step.id()))
                .ifPresent(p -> p.at = Office.plus(readings.get(1).at, 0));
        if (story.is(Fault.STEP_EARLY_INCOMPLETE)) {
            plans.remove(readings.get(readings.size() - 1));
        }
    }

    private void notForVehicle() {
        story.pack.steps().stream()
                .filter(s -> !story.applies(s.when()))
                .findFirst()
                .ifPresent(
                        s -> {
                            MarkPlan plan = new MarkPlan(s, 1, story.tick(2));
                            plan.value = s.low() == null ? null : BigDecimal.ONE;
                            plans.add(plan);
                        });
    }

    private BigDecimal limit(boolean high) {
        Pack.Step step = torque(p -> true).step;
        return MarkPlan.own(step, high ? step.high() : step.low());
    }

    private static void set(MarkPlan plan, BigDecimal value) {
        plan.value = value;
        plan.unit = plan.step.unit();
    }

    /** A fastener read twice; null leaves a reading as it was planned. */
    private void again(BigDecimal firstValue, BigDecimal secondValue) {
        MarkPlan first = torque(p -> true);
        MarkPlan second = first.again(story.tick(2));
        plans.add(second);
        if (firstValue != null) {
            set(first, firstValue);
        }
        if (secondValue != null) {
            set(second, secondValue);
        }
    }

    private void borderline(String instrument, BigDecimal value) {
        MarkPlan plan = torque(p -> true);
        set(plan, value);
        plan.instrument = instrument;
    }

    /** T-3 states 0.5 N·m: at that distance from the limit the reading is not borderline. */
    private void borderlineExact() {
        BigDecimal half = new BigDecimal("0.5");
        BigDecimal nearer = office.dice.percent(50) ? CENT : BigDecimal.ZERO;
        borderline("T-3", limit(true).subtract(half).add(nearer));
    }

    private void reading() {
        MarkPlan plan = of("reading");
        boolean high = office.dice.percent(50);
        BigDecimal limit = MarkPlan.own(plan.step, high ? plan.step.high() : plan.step.low());
        BigDecimal beyond = story.is(Fault.READING_OUTSIDE) ? CENT : BigDecimal.ZERO;
        set(plan, high ? limit.add(beyond) : limit.subtract(beyond));
    }

    private void rise(String open) {
        firstOf("closed").ifPresent(p -> set(p, new BigDecimal("0.62")));
        firstOf("open").ifPresent(p -> set(p, new BigDecimal(open)));
    }

    private void wait(BigDecimal minutes) {
        of("wait").minutes = minutes;
    }

    private void waitAgain() {
        MarkPlan wait = of("wait");
        MarkPlan again = wait.again(story.tick(1));
        boolean better = office.dice.percent(50);
        (better ? wait : again).minutes = BigDecimal.ONE.movePointLeft(1);
        plans.add(again);
    }

    private void instrument(String name) {
        torque(p -> true).instrument = name;
    }

    private void dueToday() {
        String name = office.next("T-D");
        LocalDate day = office.clock.day(story.opened);
        office.out.row(
                "instruments",
                "instrument",
                name,
                "kind",
                "torque wrench",
                "unit",
                "N·m",
                "serial",
                "W" + name);
        office.out.row(
                "calibrations",
                "instrument",
                name,
                "calibrated_on",
                day.minusDays(180).toString(),
                "due_on",
                day.toString());
        instrument(name);
    }

    private MarkPlan torque(Predicate<MarkPlan> also) {
        return first(p -> p.step.kind().equals("torque") && also.test(p)).orElseThrow();
    }

    private MarkPlan of(String kind) {
        return first(p -> p.step.kind().equals(kind)).orElseThrow();
    }

    private Optional<MarkPlan> firstOf(String step) {
        return first(p -> p.step.id().equals(step));
    }

    private Optional<MarkPlan> first(Predicate<MarkPlan> which) {
        return plans.stream().filter(which).findFirst();
    }
}
