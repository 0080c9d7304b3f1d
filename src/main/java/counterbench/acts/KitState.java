package counterbench.acts;

import counterbench.review.Component;
import counterbench.shared.Quantity;
import counterbench.stock.Account;
import counterbench.stock.Count;
import counterbench.stock.Issue;
import counterbench.stock.Ledger;
import counterbench.stock.LedgerFacts;
import counterbench.stock.Move;
import counterbench.stock.ReceivedKit;
import counterbench.stock.Source;
import counterbench.stock.StockEvent;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One kit as it stands.
 *
 * @param received as it came
 * @param moves all moves of its component, in order of time
 * @param issues those of this kit, in order of time
 * @param events what else happened to it, in order of time
 * @param counts its counts, in order of time
 */
public record KitState(
        ReceivedKit received,
        List<Move> moves,
        List<Issue> issues,
        List<StockEvent> events,
        List<Count> counts) {
    public KitState {
        Objects.requireNonNull(received, "received");
        moves = List.copyOf(moves);
        issues = issues.stream().sorted(Comparator.comparing(Issue::at)).toList();
        events = events.stream().sorted(Comparator.comparing(StockEvent::at)).toList();
        counts = counts.stream().sorted(Comparator.comparing(Count::countedAt)).toList();
    }

    static Optional<KitState> of(String serial, Component component, Ledger ledger) {
        LedgerFacts facts = component.facts();
        return Stream.concat(facts.kits().stream(), facts.arriving().stream())
                .filter(kit -> kit.kit().kit().equals(serial))
                .findFirst()
                .map(
                        kit ->
                                new KitState(
                                        kit,
                                        ledger.moves(),
                                        of(serial, facts.issues(), Issue::kit),
                                        of(serial, facts.events(), StockEvent::kit),
                                        of(serial, facts.counts(), Count::kit)));
    }

    private static <T> List<T> of(
            String serial, List<T> facts, Function<T, @Nullable String> kitOf) {
        return facts.stream().filter(fact -> serial.equals(kitOf.apply(fact))).toList();
    }

    /** Every kit of a component that the site ever had. */
    public static List<KitState> allOf(Component component) {
        Ledger ledger = Ledger.of(component.facts());
        return component.kits().stream().flatMap(k -> of(k, component, ledger).stream()).toList();
    }

    /** Its serial. */
    public String serial() {
        return received.kit().kit();
    }

    /** What is still in its box. */
    public SortedMap<String, Quantity> held() {
        return new Ledger(moves, List.of()).balance(Account.kit(serial()));
    }

    /** What it lacks: what it came without, and what of its parts was found missing since. */
    public SortedMap<String, Quantity> lacking() {
        SortedMap<String, Quantity> lacking = new TreeMap<>();
        received.kit()
                .missing()
                .forEach(one -> lacking.merge(one.part(), one.quantity(), Quantity::plus));
        for (StockEvent event : events) {
            String part = event.part();
            Quantity quantity = event.quantity();
            if (event.kind() == StockEvent.Kind.SHORT && part != null && quantity != null) {
                lacking.merge(part, quantity, Quantity::plus);
            }
        }
        return lacking;
    }

    /** Whether anything is still in its box, so that it can be issued or sent. */
    public boolean isOnShelf() {
        return held().values().stream().anyMatch(Quantity::isPositive);
    }

    /** Whether anything of it could be taken from its box at a time. */
    public boolean isFree(Instant at) {
        return held().keySet().stream().anyMatch(part -> free(part, at).isPositive());
    }

    /** Whether its box lacks something that it came with. */
    public boolean isOpened() {
        return !received.contents().equals(held());
    }

    /** How much of a part can be taken from its box at a time. */
    public Quantity free(String part, Instant at) {
        return Holding.free(Account.kit(serial()), moves, at, m -> m.part().equals(part));
    }

    /** How much of a part of it lies in its box or on a bench at a time, and later, too. */
    public Quantity lying(String part, Instant at) {
        Source source = Source.kit(serial());
        return moves.stream()
                .flatMap(move -> Stream.of(move.from(), move.to()))
                .filter(a -> a.kind() == Account.Kind.KIT || a.kind() == Account.Kind.BENCH)
                .distinct()
                .map(
                        account ->
                                Holding.free(
                                        account,
                                        moves,
                                        at,
                                        m -> m.part().equals(part) && m.source().equals(source)))
                .filter(Quantity::isPositive)
                .reduce(Quantity.ZERO, Quantity::plus);
    }

    /** The job that it was last issued to, if it was. */
    public Optional<String> job() {
        return last(issues).map(Issue::job);
    }

    /** Whether a day is past its last usable one. */
    public boolean isExpired(LocalDate day) {
        return received.kit().isExpired(day);
    }

    /** Where it is as a whole. */
    public KitPlace place() {
        return isOnShelf() ? KitPlace.ON_SHELF : left().place();
    }

    /** The same for a list. */
    public KitListing listing() {
        boolean here = isOnShelf();
        return new KitListing(received.kit(), place(), here ? null : left().where());
    }

    /** Where it is, in words that finish the sentence "the kit …". */
    public String whereabouts() {
        String where = left().where();
        return switch (place()) {
            case ON_SHELF -> "is on the shelf";
            case ISSUED -> "is issued to job " + where;
            case SENT -> "was sent to site " + where;
            case RETURNED -> "was sent back to the supplier";
            case SCRAPPED -> "was scrapped";
            case MISSING -> "was not there when it was last counted";
            case EMPTY -> "is empty";
        };
    }

    /** What took it off the shelf last. */
    private Departure left() {
        return Stream.of(
                        issues.stream().map(i -> new Departure(i.at(), KitPlace.ISSUED, i.job())),
                        events.stream().flatMap(KitState::leaving),
                        counts.stream()
                                .filter(count -> count.quantity().isZero())
                                .map(c -> new Departure(c.countedAt(), KitPlace.MISSING, null)))
                .flatMap(all -> all)
                .max(Comparator.comparing(Departure::at))
                .orElse(new Departure(received.kit().receivedAt(), KitPlace.EMPTY, null));
    }

    private static Stream<Departure> leaving(StockEvent event) {
        if (event.part() != null) {
            return Stream.empty();
        }
        return switch (event.kind()) {
            case RETURNED -> Stream.of(new Departure(event.at(), KitPlace.RETURNED, null));
            case SCRAPPED -> Stream.of(new Departure(event.at(), KitPlace.SCRAPPED, null));
            case SENT -> Stream.of(new Departure(event.at(), KitPlace.SENT, event.otherSite()));
            case SHORT -> Stream.of(new Departure(event.at(), KitPlace.EMPTY, null));
            case ARRIVED -> Stream.empty();
        };
    }

    private record Departure(Instant at, KitPlace place, @Nullable String where) {}

    private static <T> Optional<T> last(List<T> facts) {
        return facts.isEmpty() ? Optional.empty() : Optional.of(facts.get(facts.size() - 1));
    }
}
