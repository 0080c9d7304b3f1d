package counterbench.cores;

import counterbench.cores.CoreEvent.Kind;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Everything that is known of one core. Facts may come in any order; the history puts them in
 * theirs, so what it says depends on the facts alone.
 *
 * <p>Of the acknowledgements it keeps those that concern the core: rows that name its tag (whatever
 * their shipment, since a tag is one core's own), rows without a tag that name its serial on the
 * shipment that it is on, and rows that name neither, which speak of the whole shipment.
 *
 * @param core the core tag
 * @param events its facts, in {@link CoreEvent#ORDER}; at least one
 * @param acknowledgements the return centre's rows that concern it
 */
public record CoreHistory(
        String core, List<CoreEvent> events, List<Acknowledgement> acknowledgements) {
    public CoreHistory {
        Objects.requireNonNull(core, "core");
        events = ordered(core, events);
        String serial = said(events, CoreEvent::serial);
        Placement on = Placement.of(events);
        acknowledgements =
                acknowledgements.stream()
                        .filter(row -> concerns(row, core, serial, on))
                        .sorted(
                                Comparator.comparing(Acknowledgement::at)
                                        .thenComparing(Acknowledgement::address))
                        .toList();
    }

    private static List<CoreEvent> ordered(String core, List<CoreEvent> events) {
        if (events.isEmpty() || events.stream().anyMatch(e -> !e.core().equals(core))) {
            throw new IllegalArgumentException("core " + core + " needs facts, and only its own");
        }
        return events.stream().sorted(CoreEvent.ORDER).toList();
    }

    private static boolean concerns(
            Acknowledgement row, String core, @Nullable String serial, @Nullable Placement on) {
        if (row.core() != null) {
            return row.core().equals(core);
        }
        boolean samePlace = on != null && on.shipment().equals(row.shipment());
        return samePlace && (row.serial() == null || row.serial().equals(serial));
    }

    private interface Field {
        @Nullable String of(CoreEvent event);
    }

    private static @Nullable String said(List<CoreEvent> events, Field field) {
        for (CoreEvent event : events) {
            if (event.kind() == Kind.REMOVED && field.of(event) != null) {
                return field.of(event);
            }
        }
        return null;
    }

    /** The job that it was removed in, if its removal is known and says so. */
    public @Nullable String job() {
        return said(events, CoreEvent::job);
    }

    /** The serial that it bears, if its removal says so. */
    public @Nullable String serial() {
        return said(events, CoreEvent::serial);
    }

    /** Its part number, if its removal says so. */
    public @Nullable String part() {
        return said(events, CoreEvent::part);
    }

    /** When it was removed, if that is known. */
    public Optional<Instant> removedAt() {
        return of(Kind.REMOVED).map(CoreEvent::at).findFirst();
    }

    /** Its drain periods. */
    public DrainPeriods drainPeriods() {
        return DrainPeriods.of(events);
    }

    /** When the drain period began that is open at a time. */
    public Optional<Instant> drainOpenAt(Instant at) {
        return DrainPeriods.openAfter(events.stream().filter(e -> !e.at().isAfter(at)));
    }

    /** When the drain period began that an end at that time would end, or a begin replace. */
    public Optional<Instant> drainToEndAt(Instant at) {
        return DrainPeriods.openAfter(
                events.stream()
                        .filter(e -> !e.at().isAfter(at))
                        .filter(e -> e.kind() != Kind.DRAIN_BEGUN || e.at().isBefore(at)));
    }

    /** Plugs that were in it at a time, what happened at that very time included. */
    public int plugsAt(Instant at) {
        return events.stream()
                .filter(e -> !e.at().isAfter(at))
                .mapToInt(CoreHistory::plugsOf)
                .sum();
    }

    /** What had happened to it by a time; empty if nothing had. */
    public Optional<CoreHistory> until(Instant at) {
        List<CoreEvent> earlier = events.stream().filter(e -> !e.at().isAfter(at)).toList();
        return earlier.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new CoreHistory(
                                core,
                                earlier,
                                acknowledgements.stream()
                                        .filter(row -> !row.at().isAfter(at))
                                        .toList()));
    }

    /** The same with one fact more. */
    public CoreHistory with(CoreEvent event) {
        List<CoreEvent> more = new ArrayList<>(events);
        more.add(event);
        return new CoreHistory(core, more, acknowledgements);
    }

    /** Plugs fitted less plugs removed; a row that does not say how many means one. */
    public int plugs() {
        return events.stream().mapToInt(CoreHistory::plugsOf).sum();
    }

    static int plugsOf(CoreEvent event) {
        int quantity = Objects.requireNonNullElse(event.quantity(), 1);
        return switch (event.kind()) {
            case PLUGGED -> quantity;
            case UNPLUGGED -> -quantity;
            default -> 0;
        };
    }

    /** How and when it was last packed. */
    public Optional<CoreEvent> lastPacked() {
        return of(Kind.PACKED).reduce((earlier, later) -> later);
    }

    /** The shipment that it is on. */
    public Optional<Placement> placement() {
        return Optional.ofNullable(Placement.of(events));
    }

    /** The shipment that it is on and that has not left with it. */
    public Optional<Placement> openPlacement() {
        return placement()
                .filter(on -> of(Kind.SHIPPED).allMatch(e -> e.at().isBefore(on.since())));
    }

    /** When it was first shipped. Only a fact {@code shipped} says so, no acknowledgement does. */
    public Optional<Instant> firstShipped() {
        return of(Kind.SHIPPED).map(CoreEvent::at).findFirst();
    }

    /** Rows that name its tag under a shipment that it was never on. */
    public List<Acknowledgement> acknowledgedElsewhere() {
        return acknowledgements.stream()
                .filter(row -> core.equals(row.core()))
                .filter(row -> events.stream().noneMatch(e -> row.shipment().equals(e.shipment())))
                .toList();
    }

    /** All that the return centre said of it, by time, then by row. */
    public List<Answer> answers() {
        return Stream.concat(
                        events.stream().filter(e -> e.kind().acknowledges()).map(Answer::of),
                        acknowledgements.stream().map(Answer::of))
                .sorted(Answer.ORDER)
                .toList();
    }

    /** Whether the return centre said anything of it. */
    public boolean isAcknowledged() {
        return !answers().isEmpty();
    }

    /** The latest of accepted and rejected. */
    public Optional<Answer> verdict() {
        return answers().stream().filter(Answer::decides).reduce((earlier, later) -> later);
    }

    /** Whether it was packed, shipped or acknowledged, so that its draining must be over. */
    public boolean isHandedOn() {
        return of(Kind.PACKED).findAny().isPresent()
                || firstShipped().isPresent()
                || isAcknowledged();
    }

    private Stream<CoreEvent> of(Kind kind) {
        return events.stream().filter(e -> e.kind() == kind);
    }
}
