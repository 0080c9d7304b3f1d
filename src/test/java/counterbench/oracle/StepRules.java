package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Rules about the marks of completed jobs. */
final class StepRules {

    private final World world;
    private final List<Finding> found = new ArrayList<>();

    StepRules(World world) {
        this.world = world;
    }

    List<Finding> judge() {
        world.facts.jobs.values().stream().filter(Facts.Job::completed).forEach(this::job);
        return found;
    }

    private void job(Facts.Job job) {
        Pack pack = world.terms(job);
        Map<String, String> vehicle = world.attributes(job);
        Map<String, List<Facts.Mark>> marks = new LinkedHashMap<>();
        world.marksOfJob
                .getOrDefault(job.job(), List.of())
                .forEach(m -> marks.computeIfAbsent(m.step(), s -> new ArrayList<>()).add(m));
        Map<String, Pack.Step> applicable = new LinkedHashMap<>();
        for (Pack.Step step : pack.steps()) {
            When.Applies applies = step.when().holds(vehicle);
            if (applies == When.Applies.YES) {
                applicable.put(step.id(), step);
            } else if (applies == When.Applies.NO && marks.containsKey(step.id())) {
                add("step-not-for-vehicle", job, step, "");
            }
        }
        for (Pack.Step step : applicable.values()) {
            if (!marks.containsKey(step.id())) {
                add("step-missing", job, step, "");
            } else {
                early(job, step, applicable, marks);
                step(job, step, marks);
            }
        }
    }

    private void step(Facts.Job job, Pack.Step step, Map<String, List<Facts.Mark>> marks) {
        List<Facts.Mark> mine = marks.get(step.id());
        switch (step.kind()) {
            case "torque" -> torque(job, step, latestByFastener(mine));
            case "reading" -> reading(job, step, marks);
            case "wait" -> {
                BigDecimal waited = last(mine).minutes();
                if (waited.compareTo(step.minutes()) < 0) {
                    add("wait-short", job, step, waited + " min");
                }
            }
            default -> {}
        }
        mine.stream()
                .filter(m -> !m.instrument().isEmpty() && overdue(m))
                .findFirst()
                .ifPresent(m -> add("instrument-overdue", job, step, m.instrument()));
    }

    private void early(
            Facts.Job job,
            Pack.Step step,
            Map<String, Pack.Step> applicable,
            Map<String, List<Facts.Mark>> marks) {
        Instant first = marks.get(step.id()).get(0).at();
        for (String before : step.after()) {
            Optional<Instant> complete =
                    Optional.ofNullable(applicable.get(before))
                            .flatMap(s -> complete(s, marks.getOrDefault(before, List.of())));
            if (complete.isPresent() && first.isBefore(complete.get())) {
                add("step-early", job, step, "before " + before);
                return;
            }
        }
    }

    /** When all fasteners had been read, or the first mark was made. */
    private static Optional<Instant> complete(Pack.Step step, List<Facts.Mark> marks) {
        Map<Integer, Instant> firstRead = new TreeMap<>();
        marks.forEach(m -> firstRead.putIfAbsent(m.fastener(), m.at()));
        int needed = step.kind().equals("torque") ? step.fasteners() : 1;
        return firstRead.size() < needed
                ? Optional.empty()
                : step.kind().equals("torque")
                        ? firstRead.values().stream().max(Comparator.naturalOrder())
                        : Optional.of(marks.get(0).at());
    }

    private void torque(Facts.Job job, Pack.Step step, Map<Integer, Facts.Mark> latest) {
        if (latest.size() < step.fasteners()) {
            add("torque-count", job, step, latest.size() + " of " + step.fasteners());
        }
        List<Facts.Mark> outside =
                latest.values().stream().filter(m -> outside(step, base(step, m))).toList();
        if (!outside.isEmpty()) {
            add("torque-outside", job, step, outside.toString());
        }
        latest.values().stream()
                .filter(m -> !outside.contains(m) && borderline(step, m))
                .findFirst()
                .ifPresent(m -> add("torque-borderline", job, step, m.toString()));
    }

    private boolean borderline(Pack.Step step, Facts.Mark mark) {
        BigDecimal reading = base(step, mark);
        BigDecimal room =
                reading.subtract(step.low().base()).min(step.high().base().subtract(reading));
        return room.compareTo(uncertainty(mark, reading)) < 0;
    }

    private BigDecimal uncertainty(Facts.Mark mark, BigDecimal reading) {
        if (!world.facts.instrumentUnits.containsKey(mark.instrument())) {
            return BigDecimal.ZERO;
        }
        String unit = world.facts.instrumentUnits.get(mark.instrument());
        Optional<Facts.Calibration> calibration = calibration(mark);
        BigDecimal percent =
                calibration
                        .flatMap(Facts.Calibration::percent)
                        .map(p -> reading.abs().multiply(p).movePointLeft(2))
                        .orElse(BigDecimal.ZERO);
        BigDecimal absolute =
                calibration
                        .flatMap(Facts.Calibration::absolute)
                        .map(u -> Units.baseDifference(u, unit))
                        .orElse(BigDecimal.ZERO);
        return percent.max(absolute);
    }

    private void reading(Facts.Job job, Pack.Step step, Map<String, List<Facts.Mark>> marks) {
        BigDecimal value = base(step, last(marks.get(step.id())));
        if (step.riseFrom().isEmpty()) {
            if (outside(step, value)) {
                add("reading-outside", job, step, value.toPlainString());
            }
            return;
        }
        List<Facts.Mark> from = marks.getOrDefault(step.riseFrom(), List.of());
        Pack.Step fromStep =
                world.terms(job).steps().stream()
                        .filter(s -> s.id().equals(step.riseFrom()))
                        .findFirst()
                        .orElseThrow();
        if (!from.isEmpty() && outside(step, value.subtract(base(fromStep, last(from))))) {
            add("reading-outside", job, step, value + " from " + last(from));
        }
    }

    private static boolean outside(Pack.Step step, BigDecimal base) {
        return (step.low() != null && base.compareTo(limit(step, step.low())) < 0)
                || (step.high() != null && base.compareTo(limit(step, step.high())) > 0);
    }

    private static BigDecimal limit(Pack.Step step, Amount limit) {
        return step.riseFrom().isEmpty()
                ? limit.base()
                : Units.baseDifference(limit.number(), limit.unit());
    }

    private static BigDecimal base(Pack.Step step, Facts.Mark mark) {
        String unit = mark.unit().isEmpty() ? step.unit() : mark.unit();
        return Units.base(mark.value().orElseThrow(), unit);
    }

    /**
     * The instrument is unknown, or its last calibration by that day is missing or was due earlier.
     */
    private boolean overdue(Facts.Mark mark) {
        LocalDate day = world.clock.day(mark.at());
        return !world.facts.instrumentUnits.containsKey(mark.instrument())
                || calibration(mark).map(c -> c.dueOn().isBefore(day)).orElse(true);
    }

    private Optional<Facts.Calibration> calibration(Facts.Mark mark) {
        LocalDate day = world.clock.day(mark.at());
        return world.facts.calibrations.stream()
                .filter(c -> c.instrument().equals(mark.instrument()))
                .filter(c -> !c.calibratedOn().isAfter(day))
                .max(Comparator.comparing(Facts.Calibration::calibratedOn));
    }

    private static Map<Integer, Facts.Mark> latestByFastener(List<Facts.Mark> marks) {
        Map<Integer, Facts.Mark> latest = new TreeMap<>();
        marks.forEach(m -> latest.put(m.fastener(), m));
        return latest;
    }

    private static Facts.Mark last(List<Facts.Mark> marks) {
        return marks.get(marks.size() - 1);
    }

    private void add(String rule, Facts.Job job, Pack.Step step, String why) {
        found.add(world.ofJob(rule, job, "", step.id(), why));
    }
}
