package counterbench.acts;

import counterbench.shared.NearMatch;
import counterbench.shared.Quantity;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.stock.Source;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * So much of one lot of a loose part that is taken out of the store.
 *
 * @param lot null for what bears none
 * @param until the lot's last usable day, if a receipt says one
 */
public record ShelfPick(@Nullable String lot, Quantity quantity, @Nullable LocalDate until) {
    private static final Comparator<Lot> FIRST_EXPIRED =
            Comparator.comparing(Lot::until, Comparator.nullsLast(Comparator.naturalOrder()));

    /**
     * What is asked of the store.
     *
     * @param asked what was asked, as a refusal begins
     * @param lot the lot that is meant; null for the one that expires first
     */
    public record Wish(
            String asked, Shelf shelf, Quantity quantity, @Nullable String lot, Instant at) {}

    private record Lot(@Nullable String lot, Quantity free, @Nullable LocalDate until) {
        boolean isExpired(LocalDate day) {
            return until != null && day.isAfter(until);
        }
    }

    /**
     * Picks for use: the lots in date, first to expire first; an expired one only if it is named.
     *
     * @throws Refused if there is not so much
     */
    public static List<ShelfPick> forUse(Situation situation, Wish wish) {
        LocalDate day = situation.site().dayOf(wish.at());
        List<Lot> lots = lots(situation, wish);
        if (wish.lot() != null) {
            return pick(wish, lots, List.of());
        }
        return pick(
                wish,
                lots.stream().filter(lot -> !lot.isExpired(day)).toList(),
                lots.stream().filter(lot -> lot.isExpired(day)).toList());
    }

    /**
     * Picks for throwing or sending away: first to expire first, expired ones as well.
     *
     * @throws Refused if there is not so much
     */
    public static List<ShelfPick> forLeaving(Situation situation, Wish wish) {
        return pick(wish, lots(situation, wish), List.of());
    }

    private static List<ShelfPick> pick(Wish wish, List<Lot> lots, List<Lot> expired) {
        Quantity rest = wish.quantity();
        List<ShelfPick> picks = new ArrayList<>();
        for (Lot lot : lots) {
            Quantity taken = lot.free().min(rest);
            if (taken.isPositive()) {
                picks.add(new ShelfPick(lot.lot(), taken, lot.until()));
                rest = rest.minus(taken);
            }
        }
        boolean enough = !wish.shelf().free(wish.at()).isLessThan(wish.quantity());
        if (rest.isPositive() || !enough) {
            throw tooLittle(wish, lots, expired);
        }
        return picks;
    }

    private static Refused tooLittle(Wish wish, List<Lot> lots, List<Lot> expired) {
        Quantity there = sum(lots).min(wish.shelf().free(wish.at()));
        Quantity least = there.isNegative() ? Quantity.ZERO : there;
        String late =
                expired.stream()
                        .map(lot -> lot.free() + " of lot " + lot.lot() + ", until " + lot.until())
                        .collect(Collectors.joining("; "));
        return new Refused(
                wish.asked(),
                "the store has "
                        + least
                        + (wish.lot() == null ? "" : " of that lot")
                        + (late.isEmpty() ? "" : " in date; expired: " + late),
                late.isEmpty()
                        ? "take less, or record what came in first: part receive, part arrive"
                        : "take less, or name an expired lot with --lot if it must be");
    }

    private static Quantity sum(List<Lot> lots) {
        return lots.stream().map(Lot::free).reduce(Quantity.ZERO, Quantity::plus);
    }

    /** What the store has by lot; what bears no lot, out of kits as well, is one of its own. */
    private static List<Lot> lots(Situation situation, Wish wish) {
        List<String> names =
                wish.shelf().holdings().stream()
                        .map(Holding::source)
                        .filter(source -> source.kind() == Source.Kind.LOT)
                        .map(Source::name)
                        .filter(Objects::nonNull)
                        .distinct()
                        .toList();
        if (wish.lot() != null) {
            mustBeKnown(wish, wish.lot(), names);
            return List.of(lot(situation, wish, wish.lot()));
        }
        List<Lot> lots = new ArrayList<>();
        names.forEach(name -> lots.add(lot(situation, wish, name)));
        lots.removeIf(lot -> !lot.free().isPositive());
        lots.sort(FIRST_EXPIRED);
        Quantity others = wish.shelf().free(wish.at()).minus(sum(lots));
        if (others.isPositive()) {
            lots.add(new Lot(null, others, null));
        }
        return lots;
    }

    private static Lot lot(Situation situation, Wish wish, String name) {
        String part = wish.shelf().part();
        return new Lot(
                name,
                wish.shelf().free(wish.at(), Source.lot(name)),
                situation.terms().expiryOf(part, name).orElse(null));
    }

    private static void mustBeKnown(Wish wish, String lot, List<String> names) {
        if (!names.contains(lot)) {
            Optional<String> near = NearMatch.of(lot, names);
            throw new Refused(
                    wish.asked() + ", lot \"" + lot + "\"",
                    "the store has none of that lot",
                    near.map(name -> "did you mean " + name + "?")
                            .orElse(
                                    names.isEmpty()
                                            ? "leave the lot out"
                                            : "it has " + String.join(", ", names)));
        }
    }

    /** Whether the lot was past its last usable day. */
    public boolean isExpired(Site site, Instant at) {
        return until != null && site.dayOf(at).isAfter(until);
    }

    /** As people read it: {@code 2 of lot L-20, until 2026-05-01}. */
    public String words() {
        return quantity
                + (lot == null ? " without a lot" : " of lot " + lot)
                + (until == null ? "" : ", until " + until);
    }
}
