package counterbench.acts.scan;

import counterbench.acts.CoreCase;
import counterbench.acts.bench.FitState;
import counterbench.acts.bench.StepProgress;
import counterbench.campaign.Pack;
import counterbench.campaign.Step;
import counterbench.campaign.StepKind;
import counterbench.campaign.StepText;
import counterbench.shared.Minutes;
import counterbench.shared.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where a job stands: the line that a person's eyes rest on, and at length. */
public final class Standing {
    private static final String MAKER =
            "The maker's own procedure, local codes and licensed practice come first.";
    private static final String CUT = "…";
    private static final String OVERDUE = " (overdue)";
    private static final int LEAST_WORDS = 12;

    private final Bench bench;

    public Standing(Bench bench) {
        this.bench = bench;
    }

    /**
     * The next step with its value, and what is still to fit; in one line, of which first the words
     * of the step give way, then the list of parts.
     */
    public String line(int width) {
        String begin = bench.current().map(this::asked).orElseGet(this::ended);
        List<String> parts = toFit();
        String fit = parts.isEmpty() ? "" : " | fit " + String.join(", ", parts);
        if (begin.length() + fit.length() > width) {
            fit = " | " + parts.size() + (parts.size() == 1 ? " part" : " parts") + " to fit";
            fit = parts.isEmpty() || begin.length() + fit.length() > width ? "" : fit;
        }
        String what = bench.current().map(step -> ", " + step.step().what()).orElse("");
        int room = width - begin.length() - fit.length();
        if (what.length() > room) {
            what = room > LEAST_WORDS ? what.substring(0, room - 1) + CUT : "";
        }
        return begin + what + fit;
    }

    /**
     * The step that a reading or an empty line goes to, as the line names it: {@code mount 2/3};
     * empty where all are marked.
     */
    public String next() {
        return bench.current().map(step -> step.step().id() + fastener(step)).orElse("");
    }

    /** Why the step that is next should not be read with the instrument that the line names. */
    public Optional<String> warning() {
        return bench.current()
                .flatMap(step -> bench.instrumentFor(step.step()))
                .flatMap(bench::warning);
    }

    private String ended() {
        if (hasEnded()) {
            return "job " + bench.name() + " has ended; undo takes your own act back, quit leaves";
        }
        int open = Turn.missing(bench).size();
        String all = "all steps are marked";
        return open == 0
                ? all + "; done completes job " + bench.name()
                : all
                        + "; "
                        + open
                        + (open == 1
                                ? " thing is open; where tells it"
                                : " things are open; where tells them");
    }

    /** Whether the job is over, so that nothing is done on the vehicle. */
    public boolean hasEnded() {
        return !bench.job().job().isOpen();
    }

    /** Which vehicle this is about. */
    public String begin() {
        return "bench of job "
                + bench.name()
                + ", vehicle "
                + bench.job().job().vin()
                + "; help lists the words, quit leaves";
    }

    private String asked(StepProgress progress) {
        Step step = progress.step();
        List<String> parts = new ArrayList<>();
        if (step.kind() == StepKind.WAIT && step.minutes() != null) {
            parts.add("at least " + Minutes.text(step.minutes()));
        }
        limits(step).ifPresent(parts::add);
        if (step.riseFrom() != null) {
            parts.add("above step " + step.riseFrom());
        }
        bench.instrumentFor(step)
                .ifPresent(
                        i ->
                                parts.add(
                                        "with "
                                                + i.instrument()
                                                + (bench.isInCalibration(i) ? "" : OVERDUE)));
        String values = parts.isEmpty() ? "" : ": " + String.join(" ", parts);
        return step.id() + fastener(progress) + values;
    }

    private Optional<String> limits(Step step) {
        return bench.instrumentFor(step)
                .flatMap(instrument -> Units.parse(instrument.unit()))
                .flatMap(unit -> StepText.limits(step, unit))
                .or(() -> StepText.limits(step));
    }

    private String fastener(StepProgress progress) {
        int all = progress.step().fasteners();
        if (all == 1) {
            return "";
        }
        int next =
                bench.mind()
                        .focused()
                        .filter(Mind.Focus::again)
                        .map(Mind.Focus::fastener)
                        .orElseGet(() -> progress.nextFastener().orElse(all));
        return " " + next + "/" + all;
    }

    private List<String> toFit() {
        return FitState.of(bench.job(), bench.situation().now()).stream()
                .filter(state -> state.missing().isPositive() && bench.job().job().isOpen())
                .map(FitState::words)
                .toList();
    }

    /** Cautions, to be read before the work. */
    public List<String> cautions() {
        List<String> lines = new ArrayList<>();
        bench.job().pack().map(Pack::cautions).ifPresent(lines::addAll);
        lines.add(MAKER);
        return lines.stream().map(line -> "caution: " + line).toList();
    }

    /** Whether the cautions concern what is done next. */
    public boolean isBeforeWork() {
        return bench.current().filter(s -> s.step().kind() == StepKind.SAFETY).isPresent();
    }

    /** How the job stands at length: marked steps, the bench, cores, and what is open. */
    public List<String> atLength() {
        List<String> lines = new ArrayList<>();
        lines.add(
                "job "
                        + bench.name()
                        + ", campaign "
                        + bench.job().job().campaign()
                        + ", vehicle "
                        + bench.job().job().vin());
        bench.progress().steps().stream()
                .filter(step -> !step.latest().isEmpty())
                .map(step -> "marked " + step.step().id() + after(step.read()))
                .forEach(lines::add);
        lines.add("on the bench: " + orNothing(Turn.words(bench, bench.job().onBench())));
        bench.job().cores().stream()
                .flatMap(core -> bench.situation().findCore(core.core()).stream())
                .map((CoreCase core) -> Cores.state(bench.situation().site(), core))
                .forEach(lines::add);
        warning().ifPresent(lines::add);
        Turn.missing(bench).forEach(line -> lines.add("open: " + line));
        return lines;
    }

    private static String after(String read) {
        return read.isEmpty() ? "" : ": " + read;
    }

    private static String orNothing(String words) {
        return words.isEmpty() ? "nothing" : words;
    }
}
