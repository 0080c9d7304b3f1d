package counterbench.acts;

import counterbench.review.Component;
import counterbench.shared.Quantity;
import counterbench.stock.Account;
import counterbench.stock.Issue;
import counterbench.stock.Ledger;
import counterbench.stock.Move;
import counterbench.stock.ReceivedKit;
import counterbench.stock.StockEvent;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;

/**
 * One kit as it stands.
 *
 * @param received as it came
 * @param moves all moves of its component, in order of time
 * @param issues those of this kit, in order of time
 * @param events what else happened to it, in order of time
 */
public record KitState(
        ReceivedKit received, List<Move> moves, List<Issue> issues, List<StockEvent> events) {
    public KitState {
        Objects.requireNonNull(received, "received");
        moves = List.copyOf(moves);
        issues = issues.stream().sorted(Comparator.comparing(Issue::at)).toList();
        events = events.stream().sorted(Comparator.comparing(StockEvent::at)).toList();
    }

    static Optional<KitState> of(String serial, Component component, Ledger ledger) {
        return Stream.concat(
                        component.facts().kits().stream(), component.facts().arriving().stream())
                .filter(kit -> kit.kit().kit().equals(serial))
                .findFirst()
                .map(
                        kit ->
                                new KitState(
                                        kit,
                                        ledger.moves(),
                                        component.facts().issues().stream()
                                                .filter(i -> serial.equals(i.kit()))
                                                .toList(),
                                        component.facts().events().stream()
                                                .filter(e -> serial.equals(e.kit()))
                                                .toList()));
    }

    /** Its serial. */
    public String serial() {
        return received.kit().kit();
    }

    /** What is still in its box. */
    public SortedMap<String, Quantity> held() {
        return new Ledger(moves, List.of()).balance(Account.kit(serial()));
    }

    /** Whether anything is still in its box, so that it can be issued or sent. */
    public boolean isOnShelf() {
        return held().values().stream().anyMatch(Quantity::isPositive);
    }

    /** How much of a part can be taken from its box at a time. */
    public Quantity free(String part, Instant at) {
        return Holding.free(Account.kit(serial()), moves, at, m -> m.part().equals(part));
    }

    /** The job that it was last issued to, if it was. */
    public Optional<String> job() {
        return issues.isEmpty()
                ? Optional.empty()
                : Optional.of(issues.get(issues.size() - 1).job());
    }

    /** Whether a day is past its last usable one. */
    public boolean isExpired(LocalDate day) {
        LocalDate expiresOn = received.kit().expiresOn();
        return expiresOn != null && day.isAfter(expiresOn);
    }

    /** Where it is, in words that finish the sentence "the kit …". */
    public String whereabouts() {
        if (isOnShelf()) {
            return "is on the shelf";
        }
        Optional<Issue> issued = issues.stream().reduce((a, b) -> b);
        Optional<StockEvent> left = events.stream().reduce((a, b) -> b);
        if (issued.isPresent() && left.filter(e -> e.at().isAfter(issued.get().at())).isEmpty()) {
            return "is issued to job " + issued.get().job();
        }
        return left.map(KitState::leaving).orElse("is empty");
    }

    private static String leaving(StockEvent event) {
        return switch (event.kind()) {
            case RETURNED -> "was sent back to the supplier";
            case SCRAPPED -> "was scrapped";
            case SHORT, ARRIVED -> "is empty";
            case SENT -> "was sent to site " + event.otherSite();
        };
    }
}
