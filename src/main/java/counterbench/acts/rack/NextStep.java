package counterbench.acts.rack;

import counterbench.acts.CoreCase;
import counterbench.campaign.CoreTerms;
import counterbench.cores.CoreHistory;
import counterbench.cores.CoreState;
import counterbench.cores.CoreStatus;
import counterbench.cores.Whereabouts;
import counterbench.shared.Minutes;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/** What a core waits for. */
public enum NextStep {
    /** An open finding of severity stop stands against it. */
    PUT_RIGHT,
    /** It has drained long enough. */
    END_DRAIN,
    DRAIN,
    PLUG,
    PACK,
    /** It may go onto a shipment. */
    ADD,
    SHIP,
    /** It drains. */
    WAIT,
    /** It is on the way to another yard of the workshop. */
    ARRIVE,
    /** It is on the way, or there and not decided on. */
    ANSWER,
    NOTHING;

    /** The words that people and files use. */
    public String words() {
        return this == ADD ? "add to shipment" : name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Whether somebody at the site can and should do something about the core now. */
    public boolean needsHand() {
        return compareTo(WAIT) < 0;
    }

    /** What a core of which nothing was credited waits for, findings apart. */
    public static NextStep of(CoreCase core, Instant now) {
        return of(core, CoreStatus.of(core.core(), null), core.where(), false, now);
    }

    /**
     * What a core waits for.
     *
     * @param where where it is
     * @param stopped whether an open finding of severity stop stands against it
     */
    static NextStep of(
            CoreCase core, CoreStatus status, Whereabouts where, boolean stopped, Instant now) {
        if (where.isOnTheWay()) {
            return ARRIVE;
        }
        return switch (status.state()) {
            case ACCEPTED, CREDITED -> NOTHING;
            case SHIPPED, RECEIVED, REJECTED -> stopped ? PUT_RIGHT : ANSWER;
            case DRAINING -> isOver(core, now) ? END_DRAIN : WAIT;
            default -> stopped ? PUT_RIGHT : onRack(core, status.state());
        };
    }

    private static boolean isOver(CoreCase core, Instant now) {
        return core.drainOver(now).filter(over -> !over.isAfter(now)).isPresent();
    }

    private static NextStep onRack(CoreCase core, CoreState state) {
        CoreHistory history = core.core();
        Optional<CoreTerms> terms = core.terms();
        if (terms.filter(t -> mustDrain(history, t)).isPresent()) {
            return DRAIN;
        }
        if (terms.filter(t -> history.plugs() < t.plugs()).isPresent()) {
            return PLUG;
        }
        if (history.lastPacked().isEmpty()) {
            return PACK;
        }
        return state == CoreState.ON_SHIPMENT ? SHIP : ADD;
    }

    private static boolean mustDrain(CoreHistory history, CoreTerms terms) {
        Duration longest = history.drainPeriods().longest().orElse(Duration.ZERO);
        return Minutes.isShorter(longest, terms.drainMinutes());
    }
}
