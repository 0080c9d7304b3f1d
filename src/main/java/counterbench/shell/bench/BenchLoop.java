package counterbench.shell.bench;

import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.acts.bench.CompleteJob;
import counterbench.acts.scan.Acknowledged;
import counterbench.acts.scan.BatchLines;
import counterbench.acts.scan.Bench;
import counterbench.acts.scan.Mind;
import counterbench.acts.scan.ReadMeaning;
import counterbench.acts.scan.Reply;
import counterbench.acts.scan.Standing;
import counterbench.acts.scan.Turn;
import counterbench.acts.scan.Word;
import counterbench.acts.store.ReadSituation;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.facts.Canonical;
import counterbench.journal.Entry;
import counterbench.shared.Interrupted;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shared.Visible;
import counterbench.shell.Invocation;
import counterbench.shell.Status;
import counterbench.shell.acts.ActTold;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * One run of the loop. All that lasts is in the store, so it may end at any moment; what it says is
 * recorded is recorded.
 */
final class BenchLoop {
    private final Invocation in;
    private final Store store;
    private final Site site;
    private final String job;
    private final boolean asNew;
    private final BatchLines lines;
    private final Set<String> warned = new HashSet<>();
    private Mind mind = Mind.EMPTY;
    private String shown = "";
    private boolean ended;

    BenchLoop(Invocation in, Store store, Site site, String job, boolean asNew) {
        this.in = in;
        this.store = store;
        this.site = site;
        this.job = job;
        this.asNew = asNew;
        this.lines = new BatchLines(site.site(), job);
    }

    Status run() {
        open();
        while (!ended) {
            Optional<String> line = ask();
            if (line.isEmpty()) {
                break;
            }
            if (!take(line.get()) && !in.isScreen()) {
                in.tell(
                        "stopped at line "
                                + lines.number()
                                + "; put it right from there on and give the whole batch again:"
                                + " what was taken is known");
                return Status.REFUSED;
            }
        }
        if (in.isScreen()) {
            return Status.DONE;
        }
        in.print(standing().line(Integer.MAX_VALUE));
        return isWhole() ? Status.DONE : Status.REFUSED;
    }

    /** Whether all of a batch was taken; says what was not. */
    private boolean isWhole() {
        mind.begun()
                .ifPresent(
                        begun ->
                                in.tell(
                                        numbered(
                                                "\""
                                                        + begun
                                                        + "\" waits for its end; nothing of it"
                                                        + " is recorded")));
        List<String> unread = in.unread();
        if (!unread.isEmpty()) {
            in.tell(
                    numbered(
                            "the batch ends here, and "
                                    + unread.size()
                                    + (unread.size() == 1 ? " line" : " lines")
                                    + " behind it, from \""
                                    + Visible.text(unread.get(0).strip())
                                    + "\" on: not taken; done and quit stand last"));
        }
        return mind.begun().isEmpty() && unread.isEmpty();
    }

    /**
     * The next line, its letters composed as a command's; Ctrl-C ends the loop, and leaves nothing
     * undone.
     */
    private Optional<String> ask() {
        try {
            return in.ask("> ").map(Canonical::normalised);
        } catch (Interrupted e) {
            if (!in.isScreen()) {
                throw e;
            }
            in.tell(
                    "left; what was acknowledged is recorded, and bench "
                            + job
                            + " goes on where it stands");
            return Optional.empty();
        }
    }

    private void open() {
        Standing standing = standing();
        in.print(standing.begin());
        if (!standing.hasEnded() && (in.isScreen() || standing.isBeforeWork())) {
            standing.cautions().forEach(in::tell);
        }
        showLine();
    }

    /** A question that waits for its answer stays the last line. */
    private void showLine() {
        if (in.isScreen() && !ended && mind.begun().isEmpty()) {
            Standing standing = standing();
            shown = standing.next();
            standing.warning().filter(warned::add).ifPresent(in::tell);
            in.print(standing.line(in.width()));
        }
    }

    private Standing standing() {
        return new Standing(bench(Set.of(), in.now()));
    }

    private Bench bench(Set<String> named, Instant now) {
        Situation situation =
                new ReadSituation(store)
                        .latest(site, now, Named.job(job).withKits(named).withCores(named));
        situation.job(job);
        return new Bench(situation, job, mind, new Stamp(now, in.person().name()));
    }

    /** Takes a line; whether it was not refused. */
    private boolean take(String typed) {
        lines.next(typed);
        String line = mind.whole(withoutMark(typed));
        boolean isAnswer = mind.begun().isPresent();
        mind = mind.answered();
        if (isAnswer && isGivenUp(typed)) {
            in.tell(numbered("left out: " + line.strip()));
            showLine();
            return true;
        }
        boolean taken = isTaken(line);
        showLine();
        return taken;
    }

    private boolean isTaken(String line) {
        try {
            turn(line);
            return true;
        } catch (Refused e) {
            in.tell(numbered(String.valueOf(e.getMessage())));
            return false;
        }
    }

    /** Some editors begin a UTF-8 file with a byte order mark. */
    private String withoutMark(String line) {
        return lines.number() == 1 && line.startsWith("\ufeff") ? line.substring(1) : line;
    }

    private boolean isGivenUp(String answer) {
        Optional<Word> word = Word.of(answer.strip());
        boolean leaves = word.filter(w -> w == Word.QUIT || w == Word.STOP).isPresent();
        ended |= leaves;
        return leaves || answer.isBlank();
    }

    private void turn(String line) {
        Instant now = in.now();
        int year = site.dayOf(now).getYear();
        Bench bench = bench(ReadMeaning.names(line, year), now);
        Optional<Entry> known = known();
        if (known.isPresent()) {
            mind = mindAfter(bench, line, year);
            ended = isDone(line);
            in.print(numbered("known already: " + ActTold.where(site, known.get())));
            return;
        }
        Turn turn = new Turn(bench, year);
        Reply reply = in.isScreen() ? turn.take(line, shown) : turn.take(line);
        done(bench, reply, line, now);
        mind = reply.deed() instanceof Reply.Undo ? reply.mind().unfocused() : reply.mind();
        reply.say().forEach(words -> in.print(numbered(words)));
        warned.addAll(reply.say());
    }

    /** The entry that the same line of the same batch made before. */
    private Optional<Entry> known() {
        return in.isScreen() || asNew ? Optional.empty() : new RecordAct(store).made(lines.entry());
    }

    private static boolean isDone(String line) {
        String first = line.strip().split("\\s+", 2)[0];
        return Word.of(first).filter(word -> word == Word.DONE).isPresent();
    }

    /** What the line keeps in mind, though it is not taken again. */
    private Mind mindAfter(Bench bench, String line, int year) {
        try {
            return new Turn(bench, year).take(line).mind();
        } catch (Refused e) {
            return mind;
        }
    }

    private UUID entry() {
        return in.isScreen() || asNew ? UUID.randomUUID() : lines.entry();
    }

    private void done(Bench bench, Reply reply, String line, Instant now) {
        if (reply.deed() instanceof Reply.Perform act) {
            record(act, line, now);
        } else if (reply.deed() instanceof Reply.Undo undo) {
            BenchUndo.Undone undone =
                    new BenchUndo(store, site, in.person())
                            .run(bench.job(), undo.reason(), source(line), now, entry());
            in.print(numbered(undone.told()));
            undone.raised().forEach(finding -> in.tell(numbered(ActTold.of(finding))));
        } else if (reply.deed() instanceof Reply.Where) {
            new Standing(bench).atLength().forEach(words -> in.print(numbered(words)));
        } else if (reply.deed() instanceof Reply.Help) {
            help();
        } else if (reply.deed() instanceof Reply.Leave) {
            ended = true;
        }
    }

    private void record(Reply.Perform deed, String line, Instant now) {
        var by = new RecordAct.By(in.person(), site, now, in.commandName(), source(line), entry());
        RecordAct.Recorded recorded = new RecordAct(store).run(by, deed.act());
        String words = Acknowledged.words(deed.told(), recorded.facts(), job, recorded.after());
        in.print(numbered(words + ": " + ActTold.where(site, recorded.entry())));
        ActTold.besides(recorded).forEach(remark -> in.tell(numbered(remark)));
        ended = deed.act() instanceof CompleteJob;
    }

    private String source(String line) {
        return in.commandName() + " " + job + ": " + Visible.text(line.strip());
    }

    private void help() {
        for (Word word : Word.values()) {
            in.print(numbered(word.form() + ": " + word.purpose()));
        }
    }

    /** From a pipe, messages say which line they are about. */
    private String numbered(String words) {
        return in.isScreen() ? words : "line " + lines.number() + ": " + words;
    }
}
