package counterbench.acts.scan;

import counterbench.acts.Foresight;
import counterbench.acts.IssueKit;
import counterbench.acts.Parts;
import counterbench.acts.bench.CompleteJob;
import counterbench.job.Outcome;
import counterbench.judgement.Finding;
import counterbench.judgement.Severity;
import counterbench.procedure.Instrument;
import counterbench.shared.NearMatch;
import counterbench.shared.Quantity;
import counterbench.shared.Refused;
import counterbench.shared.Visible;
import counterbench.stock.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Decides what is done about one line at the bench. */
public final class Turn {
    private final Bench bench;
    private final ReadMeaning reading;
    private final Hardwares hardwares;
    private final Cores cores;
    private final Steps steps;

    /**
     * @param year the year in which labels are read, which tells a date's century
     */
    public Turn(Bench bench, int year) {
        this.bench = bench;
        this.reading = new ReadMeaning(bench, year);
        this.cores = new Cores(bench, year);
        this.hardwares = new Hardwares(bench, reading, cores);
        this.steps = new Steps(bench);
    }

    /**
     * What is to be done.
     *
     * @throws Refused if the line means nothing here, or cannot be
     */
    public Reply take(String line) {
        return about(reading.read(line));
    }

    /**
     * The same of a person who was shown which step is next. A reading or an empty line is meant
     * for that one, even if another shell has marked it since.
     *
     * @param shown what {@link Standing#next()} was then
     */
    public Reply take(String line, String shown) {
        Meaning meaning = reading.read(line);
        boolean isOfNext = meaning instanceof Meaning.Nothing || meaning instanceof Meaning.Reading;
        if (isOfNext && !new Standing(bench).next().equals(shown)) {
            throw new Refused(
                    line.isBlank()
                            ? "an empty line"
                            : "reading \"" + Visible.text(line.strip()) + "\"",
                    shown.isEmpty()
                            ? "all steps were marked when the line was shown, and are not now"
                            : "step " + shown + " was next when the line was shown, and is not now",
                    "something was recorded elsewhere meanwhile; look at the line that follows");
        }
        return about(meaning);
    }

    private Reply about(Meaning meaning) {
        if (meaning instanceof Meaning.Command command) {
            return command(command.word(), command.rest());
        } else if (meaning instanceof Meaning.Reading number) {
            return steps.number(number.measured());
        } else if (meaning instanceof Meaning.OfStep step) {
            return steps.named(step);
        } else if (meaning instanceof Meaning.Part part) {
            return hardwares.scanned(part);
        } else if (meaning instanceof Meaning.Kit kit) {
            return kit(kit.serial());
        } else if (meaning instanceof Meaning.Core core) {
            return cores.scanned(core.tag());
        } else if (meaning instanceof Meaning.Instrument instrument) {
            return with(instrument.name());
        } else if (meaning instanceof Meaning.OtherJob job) {
            return job(job.job());
        }
        return steps.nothing();
    }

    private Reply command(Word word, String rest) {
        return switch (word) {
            case FIT, REFIT, TAKE_OFF, PUT_BACK, SCRAP -> hardwares.command(word, rest);
            case CORE, DRAIN, PLUG, UNPLUG, PACK -> cores.command(word, rest);
            case MARK -> steps.mark(rest);
            case AGAIN -> steps.again(rest);
            case WITH -> with(rest);
            case UNDO -> deed(new Reply.Undo(rest.isEmpty() ? null : rest));
            case WHERE -> deed(new Reply.Where());
            case HELP -> deed(new Reply.Help());
            case QUIT, STOP -> deed(new Reply.Leave());
            case DONE -> done(rest);
        };
    }

    private Reply deed(Reply.Deed deed) {
        return new Reply(deed, List.of(), bench.mind());
    }

    /** A kit of this job is confirmed, another one is issued to it. */
    private Reply kit(String serial) {
        Mind mind = bench.mind().withKit(serial);
        if (!bench.job().kits().contains(serial) || isBackInItsBox(serial)) {
            return Reply.record(
                    new IssueKit(serial, bench.name(), bench.stamp()),
                    "kit " + serial + " issued to job " + bench.name(),
                    mind);
        }
        SortedMap<String, Quantity> left = left(serial);
        return Reply.tell(
                mind,
                left.isEmpty()
                        ? "kit " + serial + " is this job's; nothing of it is left on the bench"
                        : "kit " + serial + " is this job's; on the bench: " + words(bench, left));
    }

    private boolean isBackInItsBox(String serial) {
        return left(serial).isEmpty()
                && bench.situation().findKit(serial).filter(kit -> kit.isOnShelf()).isPresent();
    }

    private SortedMap<String, Quantity> left(String serial) {
        SortedMap<String, Quantity> left = new TreeMap<>();
        bench.job().benchHoldings().stream()
                .filter(holding -> holding.source().equals(Source.kit(serial)))
                .forEach(holding -> left.merge(holding.part(), holding.quantity(), Quantity::plus));
        return left;
    }

    static String words(Bench bench, SortedMap<String, Quantity> goods) {
        Parts parts = Parts.of(bench.situation());
        return goods.entrySet().stream()
                .map(item -> parts.words(item.getKey(), item.getValue()))
                .collect(Collectors.joining(", "));
    }

    private Reply with(String name) {
        if (name.isEmpty()) {
            return Reply.tell(
                    bench.mind().waitingAfter(Word.WITH.word()), "which instrument? scan it");
        }
        var known = bench.situation().terms().instruments();
        if (!known.containsKey(name)) {
            throw new Refused(
                    "instrument \"" + name + "\"",
                    "the site knows none of that name",
                    NearMatch.of(name, known.keySet())
                            .map(near -> "did you mean " + near + "?")
                            .orElse("import it with the sheets instruments and calibrations"));
        }
        Instrument instrument = Objects.requireNonNull(known.get(name));
        List<String> say = new ArrayList<>();
        say.add("read with " + name + ", in " + instrument.unit());
        bench.warning(instrument).ifPresent(say::add);
        return new Reply(new Reply.Tell(), say, bench.mind().withInstrument(name));
    }

    private Reply job(String job) {
        if (job.equals(bench.name())) {
            return deed(new Reply.Where());
        }
        throw new Refused(
                "job \"" + job + "\"",
                "this is the bench of job " + bench.name(),
                "quit, then open the other: bench " + job);
    }

    /** Refuses to complete a job that lacks something, unless it is to be so all the same. */
    private Reply done(String rest) {
        bench.job().mustBeOpen("done");
        List<String> missing = missing(bench);
        if (!missing.isEmpty() && !rest.equals("anyway")) {
            throw new Refused(
                    "done",
                    (missing.size() == 1 ? "this is open: " : missing.size() + " things are open: ")
                            + String.join("; ", missing),
                    "mend that, or complete it as it is: done anyway");
        }
        return Reply.record(
                new CompleteJob(bench.name(), Outcome.COMPLETED, null, null, bench.stamp()),
                "job " + bench.name() + " completed",
                bench.mind());
    }

    /**
     * What would be found about a job that were completed now, short of what is only worth a word.
     */
    public static List<String> missing(Bench bench) {
        return Foresight.ifCompleted(bench.situation(), bench.name()).stream()
                .filter(finding -> finding.rule().severity() != Severity.NOTE)
                .map(finding -> without(finding, bench.name()))
                .toList();
    }

    private static String without(Finding finding, String job) {
        return finding.message().replace("job " + job + ": ", "");
    }
}
