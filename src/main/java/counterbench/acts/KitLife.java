package counterbench.acts;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import counterbench.stock.Account;
import counterbench.stock.Count;
import counterbench.stock.Move;
import counterbench.stock.Source;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What happened to a kit and to what was in it, in order of time. */
public final class KitLife {
    private KitLife() {}

    /**
     * One thing that happened.
     *
     * @param goods what of it was moved; none for a count that found what the book says
     */
    public record Event(Instant at, String words, Map<String, Quantity> goods) {}

    private record Key(Instant at, Address fact, Account from, Account to) {}

    /** Everything that happened. */
    public static List<Event> of(KitState kit) {
        Source source = Source.kit(kit.serial());
        Map<Key, Map<String, Quantity>> moved = new LinkedHashMap<>();
        for (Move move : kit.moves()) {
            if (move.source().equals(source)) {
                moved.computeIfAbsent(
                                new Key(move.at(), move.fact(), move.from(), move.to()),
                                key -> new TreeMap<>())
                        .merge(move.part(), move.quantity(), Quantity::plus);
            }
        }
        List<Event> events = new ArrayList<>();
        moved.forEach(
                (key, goods) ->
                        events.add(new Event(key.at(), words(key.from(), key.to()), goods)));
        kit.counts().stream()
                .filter(count -> moved.keySet().stream().noneMatch(k -> isOf(k, count)))
                .forEach(count -> events.add(counted(count)));
        events.sort(Comparator.comparing(Event::at));
        return events;
    }

    private static boolean isOf(Key key, Count count) {
        return key.fact().equals(count.address());
    }

    private static Event counted(Count count) {
        boolean there = count.quantity().isPositive();
        return new Event(
                count.countedAt(), there ? "counted: there" : "counted: missing", Map.of());
    }

    private static String words(Account from, Account to) {
        String jobOf = from.kind() == Account.Kind.BENCH ? " on job " + from.name() : "";
        return switch (to.kind()) {
            case BENCH ->
                    from.kind() == Account.Kind.BENCH
                            ? "went over to job " + to.name() + " from job " + from.name()
                            : "issued to job " + to.name();
            case VEHICLE -> "fitted" + jobOf;
            case CORE -> "put on core " + to.name() + jobOf;
            case SCRAP ->
                    from.kind() == Account.Kind.VEHICLE
                            ? "taken off again on job " + from.name()
                            : "scrapped" + jobOf;
            case STORE -> "put into the store" + jobOf;
            case SUPPLIER -> "found missing" + jobOf;
            case RETURNED -> "sent back to the supplier";
            case TRANSIT -> "sent to site " + to.name();
            case COUNT -> "counted: not there";
            case KIT -> intoBox(from);
        };
    }

    private static String intoBox(Account from) {
        return switch (from.kind()) {
            case SUPPLIER -> "received";
            case TRANSIT -> "arrived from site " + from.name();
            case COUNT -> "counted: there again";
            case BENCH -> "put back from job " + from.name();
            default -> "put back";
        };
    }
}
