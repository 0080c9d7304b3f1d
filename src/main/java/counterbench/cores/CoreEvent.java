package counterbench.cores;

import counterbench.shared.Address;
import counterbench.shared.units.Weight;
import java.time.Instant;
import java.util.Comparator;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One fact in a core's life.
 *
 * @param core the core tag
 * @param quantity plugs fitted or removed, for {@code plugged} and {@code unplugged}
 * @param weight what it weighs as it was packed, for {@code packed}
 * @param otherSite the site that it was sent to, or where it arrived, for {@code sent} and {@code
 *     arrived}
 */
public record CoreEvent(
        Address address,
        String core,
        Kind kind,
        Instant at,
        @Nullable String job,
        @Nullable String serial,
        @Nullable String part,
        @Nullable Integer quantity,
        @Nullable String packaging,
        @Nullable String shipment,
        @Nullable String reason,
        @Nullable String by,
        @Nullable Weight weight,
        @Nullable String otherSite) {
    /**
     * How the facts of a core stand: by time; at one instant drain-ended, drain-begun, all others;
     * then by row.
     */
    public static final Comparator<CoreEvent> ORDER =
            Comparator.comparing(CoreEvent::at)
                    .thenComparing(e -> e.kind().rank())
                    .thenComparing(CoreEvent::address);

    public CoreEvent {
        Objects.requireNonNull(address, "address");
        Objects.requireNonNull(core, "core");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(at, "at");
    }

    /** A fact that tells neither a weight nor a site. */
    public CoreEvent(
            Address address,
            String core,
            Kind kind,
            Instant at,
            @Nullable String job,
            @Nullable String serial,
            @Nullable String part,
            @Nullable Integer quantity,
            @Nullable String packaging,
            @Nullable String shipment,
            @Nullable String reason,
            @Nullable String by) {
        this(
                address, core, kind, at, job, serial, part, quantity, packaging, shipment, reason,
                by, null, null);
    }

    /** A fact that only says what happened and when. */
    public static CoreEvent of(Address address, String core, Kind kind, Instant at) {
        return new CoreEvent(
                address, core, kind, at, null, null, null, null, null, null, null, null);
    }

    /** What can happen to a core. */
    public enum Kind {
        REMOVED("removed"),
        DRAIN_BEGUN("drain-begun"),
        DRAIN_ENDED("drain-ended"),
        PLUGGED("plugged"),
        UNPLUGGED("unplugged"),
        PACKED("packed"),
        ADDED("added"),
        TAKEN_OFF("taken-off"),
        SENT("sent"),
        ARRIVED("arrived"),
        SHIPPED("shipped"),
        RECEIVED("received"),
        ACCEPTED("accepted"),
        REJECTED("rejected");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word that sheets use. */
        public String word() {
            return word;
        }

        /** Whether it is the return centre's word on what arrived. */
        public boolean acknowledges() {
            return this == RECEIVED || this == ACCEPTED || this == REJECTED;
        }

        private int rank() {
            return switch (this) {
                case DRAIN_ENDED -> 0;
                case DRAIN_BEGUN -> 1;
                default -> 2;
            };
        }
    }
}
