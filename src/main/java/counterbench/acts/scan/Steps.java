package counterbench.acts.scan;

import counterbench.acts.bench.MarkStep;
import counterbench.acts.bench.Measured;
import counterbench.acts.bench.StepProgress;
import counterbench.campaign.StepKind;
import counterbench.procedure.Mark;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is done about steps and readings.
 *
 * <p>A step that is marked already is not marked once more by a scan: its readings are compared
 * with those that come, and one that differs is refused. To read it anew it takes the word {@code
 * again}.
 */
final class Steps {
    private final Bench bench;

    Steps(Bench bench) {
        this.bench = bench;
    }

    /** An empty line: the plain step that is next is done. */
    Reply nothing() {
        if (bench.mind().focused().isPresent() && isMarked(bench.mind().focused().get())) {
            return Reply.tell(bench.mind().on(null));
        }
        StepProgress next =
                bench.current()
                        .orElseThrow(
                                () ->
                                        new Refused(
                                                "an empty line",
                                                "no step is left to mark",
                                                "done completes the job, quit leaves it open"));
        if (next.isMeasured()) {
            throw new Refused(
                    "an empty line",
                    "step "
                            + next.step().id()
                            + " waits for "
                            + (next.step().kind() == StepKind.WAIT ? "minutes" : "a reading"),
                    "type it, such as " + example(next));
        }
        return mark(next, List.of(), null);
    }

    private boolean isMarked(Mind.Focus focus) {
        return bench.progress()
                .step(focus.step())
                .filter(step -> step.isComplete() && !focus.again())
                .isPresent();
    }

    private String example(StepProgress step) {
        return step.step().kind() == StepKind.WAIT
                ? "4.5 min"
                : "47 " + Objects.requireNonNullElse(unit(step), "");
    }

    private @Nullable String unit(StepProgress step) {
        return bench.instrumentFor(step.step())
                .map(instrument -> instrument.unit())
                .orElse(step.step().unit());
    }

    /** A step by name, perhaps with readings. */
    Reply named(Meaning.OfStep said) {
        StepProgress step = applying(said.step());
        if (step.isComplete()) {
            return marked(step, said.readings());
        }
        if (step.isMeasured() && said.readings().isEmpty()) {
            return Reply.tell(bench.mind().on(Mind.Focus.of(said.step(), 1)));
        }
        return mark(step, said.readings(), null);
    }

    private StepProgress applying(String id) {
        return bench.progress()
                .step(id)
                .orElseThrow(
                        () ->
                                new Refused(
                                        "step \"" + id + "\"",
                                        "it is not for this vehicle, as far as its attributes are"
                                                + " known",
                                        "scan another; if it was done all the same: mark "
                                                + bench.name()
                                                + " "
                                                + id
                                                + " outside the loop"));
    }

    private Reply marked(StepProgress step, List<Measured> readings) {
        String read = step.read();
        String told =
                "step "
                        + step.step().id()
                        + " is marked already"
                        + (read.isEmpty() ? "" : ": " + read);
        int fastener = 1;
        for (Measured measured : readings) {
            compare(step, fastener++, measured);
        }
        return Reply.tell(bench.mind().on(compared(step, fastener)), told);
    }

    /** What is compared next; nothing where all that the step has was. */
    private static Mind.@Nullable Focus compared(StepProgress step, int fastener) {
        boolean isLeft = step.isMeasured() && fastener <= step.latest().size();
        return isLeft ? Mind.Focus.of(step.step().id(), fastener) : null;
    }

    /** A reading: of the step that was named, or else of the next. */
    Reply number(Measured measured) {
        StepProgress step =
                bench.current()
                        .orElseThrow(
                                () ->
                                        new Refused(
                                                "reading \"" + measured + "\"",
                                                "no step waits for one",
                                                "to read a step once more: again STEP"));
        Optional<Mind.Focus> focus = bench.mind().focused();
        if (!step.isMeasured()) {
            throw new Refused(
                    "reading \"" + measured + "\"",
                    "the next step, " + step.step().id() + ", has nothing to read",
                    "scan the step that was read, or mark this one with an empty line");
        }
        if (focus.filter(Mind.Focus::again).isPresent()) {
            return again(step, focus.get(), measured);
        }
        if (step.isComplete()) {
            int fastener = focus.map(Mind.Focus::fastener).orElse(1);
            compare(step, fastener, measured);
            return Reply.tell(
                    bench.mind().on(compared(step, fastener + 1)),
                    "step " + step.step().id() + " read " + measured + " already");
        }
        return mark(step, List.of(measured), null);
    }

    /** Refuses a reading that is not the one that the step has. */
    private void compare(StepProgress step, int fastener, Measured measured) {
        List<Mark> latest = step.latest();
        if (fastener > latest.size() || !isSame(step, latest.get(fastener - 1), measured)) {
            throw new Refused(
                    "reading \"" + measured + "\"",
                    "step " + step.step().id() + " is marked already: " + step.read(),
                    "to read it once more: again "
                            + step.step().id()
                            + (step.step().fasteners() > 1 ? " FASTENER" : ""));
        }
    }

    private boolean isSame(StepProgress step, Mark mark, Measured measured) {
        if (mark.minutes() != null) {
            return measured.minutes().filter(m -> m.compareTo(mark.minutes()) == 0).isPresent();
        }
        Measured full = measured.orIn(unit(step));
        String unit = mark.unit() == null ? step.step().unit() : mark.unit();
        return mark.value() != null
                && full.value().compareTo(mark.value()) == 0
                && full.hasUnit(unit);
    }

    private Reply again(StepProgress step, Mind.Focus focus, Measured measured) {
        boolean torque = step.step().kind() == StepKind.TORQUE;
        Reply reply = mark(step, List.of(measured), torque ? (long) focus.fastener() : null);
        return new Reply(reply.deed(), reply.say(), bench.mind().on(focus.next()));
    }

    /** The word {@code again}: a marked step is read once more. */
    Reply again(String rest) {
        if (rest.isEmpty()) {
            return Reply.tell(bench.mind().waitingAfter(Word.AGAIN.word()), "which step? scan it");
        }
        List<String> words = ReadMeaning.words(rest);
        StepProgress step = applying(known(words.get(0)));
        if (!step.isMeasured()) {
            return mark(step, List.of(), null);
        }
        int all = step.step().fasteners();
        boolean isSaid = words.size() > 1 && words.get(1).matches("[0-9]{1,4}");
        int fastener = isSaid ? Integer.parseInt(words.get(1)) : 1;
        if (fastener < 1 || fastener > all) {
            throw new Refused(
                    "fastener \"" + fastener + "\"",
                    "step " + step.step().id() + " has " + all,
                    "say one of these");
        }
        int last = isSaid ? fastener : all;
        return Reply.tell(
                bench.mind().on(new Mind.Focus(step.step().id(), true, fastener, last)),
                "step "
                        + step.step().id()
                        + (isSaid && all > 1 ? ", fastener " + fastener + "," : "")
                        + " once more"
                        + (step.read().isEmpty() ? "" : "; read before: " + step.read()));
    }

    /** The word {@code mark}. */
    Reply mark(String rest) {
        if (rest.isEmpty()) {
            return Reply.tell(bench.mind().waitingAfter(Word.MARK.word()), "which step? scan it");
        }
        List<String> words = ReadMeaning.words(rest);
        List<String> behind = words.subList(1, words.size());
        List<Measured> readings = Measured.rowOf(behind);
        return named(new Meaning.OfStep(known(words.get(0)), readings));
    }

    private String known(String id) {
        List<String> ids =
                bench.job().pack().stream()
                        .flatMap(pack -> pack.procedure().stream())
                        .map(step -> step.id())
                        .toList();
        if (!ids.contains(id)) {
            throw new Refused(
                    "step \"" + id + "\"",
                    "the procedure has no such step",
                    NearMatch.of(id, ids)
                            .map(near -> "did you mean " + near + "?")
                            .orElse("its steps are " + String.join(", ", ids)));
        }
        return id;
    }

    private Reply mark(StepProgress step, List<Measured> readings, @Nullable Long fastener) {
        String instrument =
                step.step().kind() == StepKind.TORQUE || step.step().kind() == StepKind.READING
                        ? bench.instrumentFor(step.step()).map(i -> i.instrument()).orElse(null)
                        : null;
        return Reply.record(
                new MarkStep(
                        bench.name(),
                        step.step().id(),
                        readings,
                        fastener,
                        instrument,
                        bench.stamp()),
                "step " + step.step().id() + " marked",
                bench.mind().on(null).on(isLeft(step, readings) ? bench.mind().focus() : null));
    }

    /** A torque step of which fasteners are left stays the one that is read. */
    private static boolean isLeft(StepProgress step, List<Measured> readings) {
        return step.step().kind() == StepKind.TORQUE
                && step.marks().latestByFastener().size() + readings.size()
                        < step.step().fasteners();
    }
}
