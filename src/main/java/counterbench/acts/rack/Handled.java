package counterbench.acts.rack;

import counterbench.acts.CoreCase;
import counterbench.acts.JobState;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.campaign.CoreTerms;
import counterbench.cores.Answer;
import counterbench.cores.CoreEvent;
import counterbench.cores.CoreHistory;
import counterbench.cores.Whereabouts;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Address;
import counterbench.shared.Minutes;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** A core in somebody's hands, at the time of the act. */
record Handled(Site site, CoreCase core, Stamp stamp) {
    /** Where a fact stands that is not recorded yet: after everything. */
    private static final Address AFTER_ALL = new Address(Long.MAX_VALUE, 1);

    /**
     * A core that lies in a yard at the time of the act.
     *
     * @throws Refused if it was not removed yet, was on the way to another yard, or had left
     */
    static Handled of(String tag, Situation situation, Stamp stamp) {
        Handled handled = onPaper(tag, situation, stamp);
        handled.refuseOnTheWay();
        return handled;
    }

    /**
     * The same, which may be on the way to another yard: for what is done to paper only.
     *
     * @throws Refused if it was not removed yet, or had left
     */
    static Handled onPaper(String tag, Situation situation, Stamp stamp) {
        Handled handled = known(tag, situation, stamp);
        handled.refuseBeforeRemoval();
        handled.refuseAfterShipping();
        return handled;
    }

    /**
     * A core wherever it is.
     *
     * @throws Refused if there is none of that tag
     */
    static Handled known(String tag, Situation situation, Stamp stamp) {
        return new Handled(situation.site(), situation.core(tag), stamp);
    }

    /** Where it was at the time of the act. */
    Whereabouts where() {
        return Whereabouts.at(stamp.at(), history(), site.site());
    }

    private void refuseOnTheWay() {
        Whereabouts then = where();
        if (!then.isOnTheWay()) {
            return;
        }
        boolean still = Whereabouts.of(history(), site.site()).equals(then);
        throw new Refused(
                asked(),
                (still ? "it is on the way to " : "it was then on the way to ")
                        + then.site()
                        + (still ? " since " : ", sent at ")
                        + site.wallTime(then.since()),
                still
                        ? "take it in there first: core arrive " + tag() + " --site " + then.site()
                        : "say when it happened with --at");
    }

    private void refuseBeforeRemoval() {
        history()
                .removedAt()
                .filter(stamp.at()::isBefore)
                .ifPresent(
                        removed -> {
                            throw new Refused(
                                    asked(),
                                    "it was removed later, at " + site.wallTime(removed),
                                    "say when it happened with --at");
                        });
    }

    private void refuseAfterShipping() {
        Optional<Instant> shipped = history().firstShipped().filter(at -> !stamp.at().isBefore(at));
        if (shipped.isPresent() && !cameBack()) {
            throw new Refused(
                    asked(),
                    "it left at " + site.wallTime(shipped.get()),
                    "say with --at what was done before that");
        }
    }

    /**
     * Refuses an act that ends what was done later.
     *
     * @param done what the act does to it
     * @throws Refused if something on the rack was done to it later
     */
    void refuseBeforeLastAct(String done) {
        history().events().stream()
                .filter(event -> !event.kind().acknowledges())
                .filter(event -> event.at().isAfter(stamp.at()))
                .reduce((earlier, later) -> later)
                .ifPresent(
                        last -> {
                            throw new Refused(
                                    asked(),
                                    (last.kind() == CoreEvent.Kind.ARRIVED ? "it " : "it was ")
                                            + last.kind().word()
                                            + " later, at "
                                            + site.wallTime(last.at()),
                                    "say with --at when it was " + done);
                        });
    }

    /** A core that the return centre refused may be on the rack again. */
    private boolean cameBack() {
        return history()
                .verdict()
                .map(Answer::kind)
                .filter(kind -> kind == CoreEvent.Kind.REJECTED)
                .isPresent();
    }

    /** How a refusal begins. */
    String asked() {
        return "core \"" + tag() + "\"";
    }

    String tag() {
        return history().core();
    }

    CoreHistory history() {
        return core.core();
    }

    JobState job() {
        return core.job();
    }

    Optional<CoreTerms> terms() {
        return core.terms();
    }

    /** A fact of its life, at the time of the act. */
    FactRow row(CoreEvent.Kind kind) {
        return stamp.row(FactKind.CORES).with("core", tag()).with("event", kind.word());
    }

    /** Its history with such a fact. */
    CoreHistory after(CoreEvent.Kind kind) {
        return history().with(CoreEvent.of(AFTER_ALL, tag(), kind, stamp.at()));
    }

    /** What to say where it has not drained long enough, if it has not. */
    Optional<String> drainedTooShort(CoreHistory after) {
        return terms().filter(t -> t.drainMinutes().signum() > 0)
                .filter(t -> isTooShort(after.drainPeriods().longest(), t))
                .map(t -> tooShort(after, t));
    }

    private static boolean isTooShort(Optional<Duration> longest, CoreTerms terms) {
        return longest.filter(time -> !Minutes.isShorter(time, terms.drainMinutes())).isEmpty();
    }

    private String tooShort(CoreHistory after, CoreTerms terms) {
        String required = Minutes.text(terms.drainMinutes());
        String was =
                after.drainPeriods()
                        .longest()
                        .map(time -> "its longest drain that counts is " + Minutes.text(time))
                        .orElse("no drain of it counts");
        String unplug = after.plugs() > 0 ? "unplug " + tag() + ", " : "";
        return was
                + ", and "
                + required
                + " are required: "
                + unplug
                + "drain it again for the whole time, then plug it";
    }
}
