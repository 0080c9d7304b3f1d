package counterbench.cores;

import counterbench.cores.CoreEvent.Kind;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where a core is: in one yard, on the way to one, or gone, and never in two places. The latest of
 * sent, arrived and shipped tells. A core of which the return centre said something later, or that
 * it accepted at any time, is gone; until something is known of it, it lies in the yard of its own
 * site.
 *
 * @param site the yard in which it lies, or to which it is on the way, or from which it left
 * @param from the yard that sent it; only of a core on the way
 * @param since since when it is there
 */
public record Whereabouts(Place place, String site, @Nullable String from, Instant since) {
    /** The three ways of being somewhere. */
    public enum Place {
        IN_YARD,
        ON_THE_WAY,
        /** It left for the return centre. */
        GONE
    }

    public Whereabouts {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(since, "since");
        if ((place == Place.ON_THE_WAY) != (from != null)) {
            throw new IllegalArgumentException(
                    "what is on the way comes from a yard, else nothing");
        }
    }

    /**
     * Where all facts of a core leave it.
     *
     * @param home the site whose core it is
     */
    public static Whereabouts of(CoreHistory history, String home) {
        Instant first = history.events().get(0).at();
        Whereabouts where = new Whereabouts(Place.IN_YARD, home, null, first);
        for (CoreEvent event : history.events()) {
            where = where.after(event);
        }
        return where.answered(history);
    }

    /**
     * Where a core was at a time, what happened at that very time included; in the yard of its own
     * site before anything is known of it.
     *
     * @param home the site whose core it is
     */
    public static Whereabouts at(Instant time, CoreHistory history, String home) {
        return history.until(time)
                .map(earlier -> of(earlier, home))
                .orElseGet(() -> new Whereabouts(Place.IN_YARD, home, null, time));
    }

    /** Since when a core is on the way between two sites, if it is. */
    static Optional<Instant> onTheWaySince(CoreHistory history) {
        return Optional.of(of(history, "")).filter(Whereabouts::isOnTheWay).map(Whereabouts::since);
    }

    private Whereabouts after(CoreEvent event) {
        Kind kind = event.kind();
        if (kind == Kind.SHIPPED) {
            return new Whereabouts(Place.GONE, site, null, event.at());
        }
        String other = event.otherSite();
        if (other == null) {
            return this;
        }
        return switch (kind) {
            case SENT -> new Whereabouts(Place.ON_THE_WAY, other, site, event.at());
            case ARRIVED -> new Whereabouts(Place.IN_YARD, other, null, event.at());
            default -> this;
        };
    }

    private Whereabouts answered(CoreHistory history) {
        boolean moved = history.events().stream().anyMatch(e -> e.otherSite() != null);
        boolean accepted =
                history.verdict().filter(answer -> answer.kind() == Kind.ACCEPTED).isPresent();
        return history.answers().stream()
                .reduce((earlier, later) -> later)
                .filter(last -> accepted || !moved || !last.at().isBefore(since))
                .filter(last -> place != Place.GONE)
                .map(last -> new Whereabouts(Place.GONE, site, null, last.at()))
                .orElse(this);
    }

    /** Whether it is between two yards. */
    public boolean isOnTheWay() {
        return place == Place.ON_THE_WAY;
    }

    /** Whether it left for the return centre. */
    public boolean isGone() {
        return place == Place.GONE;
    }

    /** What to say of it behind its state, where it is not in the yard of its own site. */
    public String besides(String home) {
        return switch (place) {
            case IN_YARD -> site.equals(home) ? "" : ", at " + site;
            case ON_THE_WAY -> ", to " + site;
            case GONE -> "";
        };
    }

    /** Whether it lies in a yard, or is on the way to one. */
    public boolean isIn(Place there, String yard) {
        return place == there && site.equals(yard);
    }
}
