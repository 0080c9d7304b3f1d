package counterbench.acts;

import counterbench.shared.Quantity;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Kits and loose parts that other sites sent to this one and that have not arrived. */
public final class UnderWay {
    private final List<Sending> open;

    private UnderWay(List<Sending> open) {
        this.open = List.copyOf(open);
    }

    /**
     * A row of a kit or a loose part between two sites.
     *
     * @param otherSite the sender
     * @param at when it was sent, or arrived
     * @param kit the kit; null for a loose part
     * @param part the loose part; null for a kit
     * @param quantity how much of the part; one kit
     */
    public record Sending(
            String otherSite,
            Instant at,
            @Nullable String kit,
            @Nullable String part,
            Quantity quantity,
            @Nullable String lot) {
        public Sending {
            Objects.requireNonNull(otherSite, "otherSite");
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(quantity, "quantity");
        }

        private Sending less(Quantity arrived) {
            return new Sending(otherSite, at, kit, part, quantity.minus(arrived), lot);
        }

        private boolean isLike(Sending other, boolean sameLot) {
            return otherSite.equals(other.otherSite)
                    && Objects.equals(kit, other.kit)
                    && Objects.equals(part, other.part)
                    && (!sameLot || Objects.equals(lot, other.lot));
        }
    }

    /** What was sent less what arrived: of the same lot first, the oldest first. */
    public static UnderWay of(Collection<Sending> sent, Collection<Sending> arrived) {
        List<Sending> open =
                new ArrayList<>(sent.stream().sorted(Comparator.comparing(Sending::at)).toList());
        List<Sending> rest = new ArrayList<>();
        arrived.forEach(arrival -> rest.add(takeOff(open, arrival, true)));
        rest.forEach(arrival -> takeOff(open, arrival, false));
        open.removeIf(sending -> !sending.quantity().isPositive());
        return new UnderWay(open);
    }

    private static Sending takeOff(List<Sending> open, Sending arrival, boolean sameLot) {
        Sending rest = arrival;
        for (int i = 0; i < open.size() && rest.quantity().isPositive(); i++) {
            if (open.get(i).isLike(arrival, sameLot)) {
                Quantity taken = open.get(i).quantity().min(rest.quantity());
                open.set(i, open.get(i).less(taken));
                rest = rest.less(taken);
            }
        }
        return rest;
    }

    /** All of it, the oldest first. */
    public List<Sending> all() {
        return open;
    }

    /** Where a kit is on its way from. */
    public List<Sending> ofKit(String kit) {
        return open.stream().filter(sending -> kit.equals(sending.kit())).toList();
    }

    /** What is on its way of a loose part, the oldest first. */
    public List<Sending> ofPart(String part) {
        return open.stream()
                .filter(sending -> sending.kit() == null && part.equals(sending.part()))
                .toList();
    }

    /** The kits on their way. */
    public List<String> kits() {
        return open.stream().map(Sending::kit).filter(Objects::nonNull).distinct().toList();
    }
}
