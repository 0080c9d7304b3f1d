package counterbench.acts;

import counterbench.job.Job;
import counterbench.job.Outcome;
import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.review.Component;
import counterbench.review.JobFile;
import counterbench.review.JudgeComponent;
import counterbench.review.JudgeSite;
import counterbench.review.JudgedComponent;
import counterbench.shared.Address;
import counterbench.stock.JobEnd;
import counterbench.stock.LedgerFacts;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What findings an act has raised, or will raise once its job is completed, so that it can be put
 * right while the vehicle is there.
 *
 * <p>Open jobs are judged as if they were completed now. Rules that would only say that the work is
 * not done yet are left out for them.
 */
public final class Foresight {
    private static final Set<Rule> WORK_NOT_DONE =
            EnumSet.of(
                    Rule.HARDWARE_SHORT,
                    Rule.LEFT_ON_BENCH,
                    Rule.STEP_MISSING,
                    Rule.TORQUE_COUNT,
                    Rule.CORE_MISSING,
                    Rule.CORE_OVERDUE,
                    Rule.JOB_IDLE);

    private static final Set<Rule> ONLY_TIME = EnumSet.of(Rule.CORE_OVERDUE, Rule.JOB_IDLE);

    /** Where a completion would stand that is not recorded: after everything. */
    private static final Address AFTER_ALL = new Address(Long.MAX_VALUE, 1);

    private final Set<Known> before;

    private Foresight(Set<Known> before) {
        this.before = before;
    }

    /** What is known of a finding, without what the clock changes. */
    private record Known(Rule rule, Subject subject, String evidence) {
        static Known of(Finding finding) {
            return new Known(finding.rule(), finding.subject(), finding.evidence());
        }
    }

    /** Remembers what can be found before an act. */
    public static Foresight before(Situation situation) {
        return before(ahead(situation));
    }

    /** Remembers what was found before an act. */
    public static Foresight before(List<Finding> found) {
        Set<Known> known = new HashSet<>();
        found.forEach(finding -> known.add(Known.of(finding)));
        return new Foresight(known);
    }

    /** What can be found after the act and could not before, or is told again by it. */
    public List<Finding> raised(Situation after, Act act) {
        return ahead(after).stream().filter(f -> isNew(f) || act.tellsAgain(f)).toList();
    }

    /** Which of some findings were not there before. */
    public List<Finding> raised(List<Finding> after) {
        return after.stream().filter(this::isNew).toList();
    }

    private boolean isNew(Finding finding) {
        return !before.contains(Known.of(finding));
    }

    /** Every finding that the situation holds, or will hold once its open jobs are completed. */
    public static List<Finding> ahead(Situation situation) {
        List<Finding> found = new ArrayList<>();
        for (Component component : situation.components()) {
            found.addAll(of(situation, component));
        }
        Findings ofStore = new Findings();
        for (String part : situation.shelves()) {
            JudgeSite.store(situation.site(), List.of(situation.shelf(part).timeline()), ofStore);
        }
        found.addAll(ofStore.found());
        return found;
    }

    /**
     * Every finding that there would be about a job and its cores if it were completed now, the
     * work that is not done yet included.
     */
    public static List<Finding> ifCompleted(Situation situation, String job) {
        return situation.components().stream()
                .flatMap(
                        component ->
                                judged(situation, component)
                                        .findings()
                                        .getOrDefault(job, List.of())
                                        .stream())
                .filter(finding -> !ONLY_TIME.contains(finding.rule()))
                .toList();
    }

    private static JudgedComponent judged(Situation situation, Component component) {
        return new JudgeComponent(situation.site(), situation.terms(), situation.now())
                .judge(asIfCompleted(situation, component));
    }

    private static List<Finding> of(Situation situation, Component component) {
        JudgedComponent judged = judged(situation, component);
        Set<String> open = openJobs(component);
        Stream<Finding> ofJobs =
                judged.findings().entrySet().stream()
                        .flatMap(
                                e ->
                                        e.getValue().stream()
                                                .filter(
                                                        f ->
                                                                isToldOf(
                                                                        open.contains(e.getKey()),
                                                                        f)));
        return Stream.concat(ofJobs, judged.ofKits().stream()).toList();
    }

    private static boolean isToldOf(boolean isOpen, Finding finding) {
        return !isOpen || !WORK_NOT_DONE.contains(finding.rule());
    }

    private static Set<String> openJobs(Component component) {
        Set<String> open = new HashSet<>();
        component.jobs().stream().filter(Foresight::isOpen).forEach(f -> open.add(f.name()));
        return open;
    }

    private static boolean isOpen(JobFile file) {
        return Optional.ofNullable(file.job()).filter(Job::isOpen).isPresent();
    }

    private static Component asIfCompleted(Situation situation, Component component) {
        Instant now = situation.now();
        LedgerFacts facts = component.facts();
        List<JobEnd> ends = new ArrayList<>(facts.ends());
        List<JobFile> files = new ArrayList<>();
        for (JobFile file : component.jobs()) {
            Job job = file.job();
            if (job != null && job.isOpen()) {
                ends.add(new JobEnd(AFTER_ALL, job.job(), now, situation.terms().measuredParts()));
                files.add(file.with(job.ended(Outcome.COMPLETED, now)));
            } else {
                files.add(file);
            }
        }
        return new Component(files, component.kits(), facts.withEnds(ends), component.nextFact());
    }
}
