package counterbench.procedure.rules;

import counterbench.campaign.Condition.Holds;
import counterbench.campaign.Pack;
import counterbench.campaign.Step;
import counterbench.job.JobFacts;
import counterbench.job.JudgedJob;
import counterbench.procedure.Instrument;
import counterbench.procedure.Mark;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What the step rules judge: a job, its procedure, its marks, and the instruments they name. */
public final class ProcedureFacts implements JobFacts {
    private static final StepMarks UNMARKED = new StepMarks(List.of());

    private final JudgedJob judged;
    private final Pack pack;
    private final Map<String, String> attributes;
    private final Map<String, Instrument> instruments;
    private final SortedMap<String, StepMarks> marks = new TreeMap<>();
    private final List<Step> applicable;

    /**
     * The facts of one job.
     *
     * @param pack the terms in force on the day of completion
     * @param attributes the vehicle's; none for one that is not listed
     * @param marks the job's, in any order
     * @param instruments those that the site knows, by name
     */
    public ProcedureFacts(
            JudgedJob judged,
            Pack pack,
            Map<String, String> attributes,
            List<Mark> marks,
            Map<String, Instrument> instruments) {
        this.judged = Objects.requireNonNull(judged, "judged");
        this.pack = Objects.requireNonNull(pack, "pack");
        this.attributes = Map.copyOf(attributes);
        this.instruments = instruments;
        SortedMap<String, List<Mark>> byStep = new TreeMap<>();
        marks.forEach(m -> byStep.computeIfAbsent(m.step(), s -> new ArrayList<>()).add(m));
        byStep.forEach((step, of) -> this.marks.put(step, new StepMarks(of)));
        this.applicable = steps(Holds.YES);
    }

    @Override
    public JudgedJob judged() {
        return judged;
    }

    /** The steps whose condition holds for the vehicle, in the order of the pack. */
    List<Step> applicable() {
        return applicable;
    }

    /** The steps that are so with the vehicle, in the order of the pack. */
    List<Step> steps(Holds holds) {
        return pack.procedure().stream().filter(s -> holds(s) == holds).toList();
    }

    /** The step of that name, if the pack has it. */
    Optional<Step> step(String id) {
        return pack.step(id);
    }

    /** Whether a step is one for the vehicle. */
    Holds holds(Step step) {
        return step.when().on(attributes);
    }

    /** The names of all marked steps, sorted. */
    List<String> markedSteps() {
        return List.copyOf(marks.keySet());
    }

    /** The marks of a step; none if it has none. */
    StepMarks marksOf(String step) {
        return marks.getOrDefault(step, UNMARKED);
    }

    /** The instrument of that name, if the site knows it. */
    Optional<Instrument> instrument(@Nullable String name) {
        return name == null ? Optional.empty() : Optional.ofNullable(instruments.get(name));
    }
}
