package counterbench.acts.bench;

import counterbench.acts.CoreCase;
import counterbench.acts.Foresight;
import counterbench.acts.Holding;
import counterbench.acts.JobState;
import counterbench.acts.Parts;
import counterbench.acts.Situation;
import counterbench.campaign.Condition.Holds;
import counterbench.campaign.Pack;
import counterbench.campaign.Step;
import counterbench.campaign.StepText;
import counterbench.job.Job;
import counterbench.judgement.Finding;
import counterbench.printing.Block;
import counterbench.printing.Block.Column;
import counterbench.procedure.Mark;
import counterbench.shared.Minutes;
import counterbench.shared.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A job on paper or screen: whose it is, the procedure for this very vehicle, what is missing. */
public final class JobPage {
    private static final String MAKER =
            "The maker's own procedure, local codes and licensed practice come first. What stands"
                    + " here is bookkeeping, and no leave to drive.";

    private final Situation situation;
    private final JobState state;
    private final List<Block> blocks = new ArrayList<>();

    private JobPage(Situation situation, String job) {
        this.situation = situation;
        this.state = situation.job(job);
    }

    /** The whole sheet: cautions, procedure, hardware, bench, cores, and what is open. */
    public static List<Block> sheet(Situation situation, String job) {
        JobPage page = new JobPage(situation, job);
        page.head();
        page.cautions();
        page.procedure();
        page.goods();
        return List.copyOf(page.blocks);
    }

    /** How it stands, without the procedure. */
    public static List<Block> summary(Situation situation, String job) {
        JobPage page = new JobPage(situation, job);
        page.head();
        page.marked();
        page.goods();
        return List.copyOf(page.blocks);
    }

    private void goods() {
        hardware();
        bench();
        cores();
        open();
    }

    private Site site() {
        return situation.site();
    }

    private void head() {
        Job job = state.job();
        Optional<Pack> pack = state.pack();
        say(
                "campaign "
                        + job.campaign()
                        + pack.map(p -> ", revision " + p.revision() + ": " + p.title())
                                .orElse(""));
        say("vehicle " + job.vin() + attributes());
        say(
                "opened "
                        + site().wallTime(job.openedAt())
                        + said(", technician ", job.technician())
                        + said(", work order ", job.workOrder())
                        + said(", mileage ", job.mileage())
                        + said(", does again job ", job.redoOf()));
        Optional.ofNullable(job.outcome())
                .ifPresent(
                        outcome ->
                                say(
                                        outcome.word()
                                                + Optional.ofNullable(job.completedAt())
                                                        .map(at -> " " + site().wallTime(at))
                                                        .orElse("")));
        say("kits: " + (state.kits().isEmpty() ? "none" : String.join(", ", state.kits())));
    }

    private String attributes() {
        return state.attributes().entrySet().stream()
                .map(e -> ", " + e.getKey() + " " + e.getValue())
                .collect(Collectors.joining());
    }

    private static String said(String before, @Nullable Object value) {
        return value == null ? "" : before + value;
    }

    private void say(String text) {
        blocks.add(new Block.Paragraph(text));
    }

    private void heading(String text) {
        blocks.add(new Block.Heading(text));
    }

    private void cautions() {
        heading("Cautions");
        state.pack().stream()
                .flatMap(pack -> pack.cautions().stream())
                .forEach(caution -> blocks.add(new Block.Caution(caution)));
        blocks.add(new Block.Caution(MAKER));
    }

    private void procedure() {
        heading("Procedure");
        if (state.pack().isEmpty()) {
            say("no pack of the campaign is loaded");
            return;
        }
        List<List<String>> rows =
                Progress.of(state).steps().stream()
                        .map(
                                step ->
                                        List.of(
                                                step.step().id(),
                                                step.step().what(),
                                                StepText.asked(step.step()),
                                                done(step)))
                        .toList();
        blocks.add(
                new Block.Table(
                        List.of(
                                new Column("step", 2),
                                new Column("do", 6),
                                new Column("wanted", 6),
                                new Column("done", 5)),
                        rows));
        unknown().forEach(this::say);
        say("Values in brackets are rounded; the first ones count.");
    }

    private Stream<String> unknown() {
        return state.pack().stream()
                .flatMap(pack -> pack.procedure().stream())
                .filter(step -> step.when().on(state.attributes()) == Holds.UNKNOWN)
                .map(JobPage::cannotBeTold);
    }

    private static String cannotBeTold(Step step) {
        return "Whether step "
                + step.id()
                + " is for this vehicle cannot be told: it asks for "
                + String.join(", ", step.when().answers().keySet())
                + ". Complete the list of vehicles.";
    }

    private String done(StepProgress step) {
        if (step.latest().isEmpty()) {
            return "";
        }
        Mark last = step.latest().get(step.latest().size() - 1);
        String read = step.read();
        return (read.isEmpty() ? "" : read + ", ")
                + site().wallTime(last.at())
                + said(" ", last.by())
                + said(" with ", last.instrument())
                + (step.isComplete() ? "" : ", not all");
    }

    private void marked() {
        Progress progress = Progress.of(state);
        heading("Steps");
        say(
                progress.steps().size()
                        - progress.open().size()
                        + " of "
                        + progress.steps().size()
                        + " marked"
                        + progress.next().map(step -> ", next " + step.step().id()).orElse(""));
    }

    private void hardware() {
        heading("Hardware on the vehicle");
        List<List<String>> rows =
                FitState.of(state, situation.now()).stream().map(JobPage::row).toList();
        blocks.add(
                new Block.Table(
                        List.of(
                                new Column("part", 3),
                                new Column("name", 5),
                                new Column("wanted", 2),
                                new Column("new", 2),
                                new Column("refitted", 2),
                                new Column("to_fit", 2)),
                        rows));
    }

    private static List<String> row(FitState fit) {
        return List.of(
                fit.requirement().part(),
                fit.requirement().name(),
                fit.requirement().isConditionUnknown() ? "?" : fit.withUnit(fit.wanted()),
                fit.withUnit(fit.fresh()),
                fit.withUnit(fit.old()),
                fit.withUnit(fit.missing()));
    }

    private void bench() {
        heading("On the bench");
        List<Holding> held = state.benchHoldings();
        if (held.isEmpty()) {
            say("nothing");
            return;
        }
        blocks.add(
                new Block.Table(
                        List.of(
                                new Column("part", 3),
                                new Column("from", 4),
                                new Column("quantity", 2)),
                        held.stream()
                                .map(
                                        h ->
                                                List.of(
                                                        h.part(),
                                                        h.source().toString(),
                                                        Parts.of(situation)
                                                                .amount(h.part(), h.quantity())))
                                .toList()));
    }

    private void cores() {
        heading("Cores");
        List<CoreCase> cores =
                state.cores().stream()
                        .flatMap(core -> situation.findCore(core.core()).stream())
                        .toList();
        if (cores.isEmpty()) {
            say("none removed");
            return;
        }
        blocks.add(
                new Block.Table(
                        List.of(
                                new Column("core", 3),
                                new Column("serial", 3),
                                new Column("state", 3),
                                new Column("drained", 4),
                                new Column("plugs", 2)),
                        cores.stream().map(this::row).toList()));
    }

    private List<String> row(CoreCase core) {
        String wanted =
                core.terms()
                        .map(t -> " (" + Minutes.text(t.drainMinutes()) + " wanted)")
                        .orElse("");
        return List.of(
                core.core().core(),
                Objects.requireNonNullElse(core.core().serial(), ""),
                core.standing(),
                core.core().drainPeriods().longest().map(Minutes::text).orElse("not yet") + wanted,
                core.core().plugs() + core.terms().map(t -> " of " + t.plugs()).orElse(""));
    }

    private void open() {
        boolean isOpen = state.job().isOpen();
        heading(isOpen ? "Open, if it were completed now" : "Found");
        List<Finding> found = Foresight.ifCompleted(situation, state.name());
        found.stream().map(JobPage::words).forEach(this::say);
        if (found.isEmpty()) {
            say("nothing");
        }
    }

    private static String words(Finding finding) {
        return finding.rule().severity().word()
                + " "
                + finding.rule().word()
                + ": "
                + finding.message();
    }
}
