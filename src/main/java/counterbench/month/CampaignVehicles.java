package counterbench.month;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What became of a campaign's vehicles.
 *
 * @param campaign the campaign
 * @param listed the listed vehicles, by compared VIN
 * @param events what happened to vehicles, in any order
 */
public record CampaignVehicles(
        String campaign, Collection<String> listed, Collection<Event> events) {
    public CampaignVehicles {
        listed = List.copyOf(listed);
        events = List.copyOf(events);
    }

    /** How a vehicle stands. */
    public enum State {
        COMPLETED("completed"),
        NOT_NEEDED("inspected, not needed"),
        EXPORTED("exported"),
        STOLEN("stolen"),
        SCRAPPED("scrapped"),
        UNREACHABLE("unreachable"),
        DECLINED("declined"),
        OUTSTANDING("outstanding");

        private final String words;

        State(String words) {
            this.words = words;
        }

        /** As people read it. */
        public String words() {
            return words;
        }

        /** Whether the work on the vehicle is over. */
        boolean isDone() {
            return this == COMPLETED || this == NOT_NEEDED;
        }
    }

    /**
     * Something that happened to a vehicle.
     *
     * @param vin compared
     * @param job the job that did it, if one did
     * @param reason what was said about it
     */
    public record Event(
            String vin, LocalDate day, State state, @Nullable String job, @Nullable String reason) {
        static final Comparator<Event> IN_TIME =
                Comparator.comparing(Event::day).thenComparing(e -> e.job() == null ? "" : e.job());
    }

    /** How a vehicle stands, and since when. */
    public record Vehicle(String vin, boolean isListed, State state, @Nullable Event last) {}

    /**
     * Every vehicle that is listed, or was done without being listed, as it stands at the end of a
     * day. What was done stays done, whatever was said later.
     */
    public List<Vehicle> on(LocalDate day) {
        Map<String, Event> last = new HashMap<>();
        events.stream()
                .filter(event -> !event.day().isAfter(day))
                .sorted(Event.IN_TIME)
                .forEach(event -> last.merge(event.vin(), event, CampaignVehicles::weightier));
        Map<String, Vehicle> vehicles = new TreeMap<>();
        listed.forEach(vin -> vehicles.put(vin, vehicle(vin, true, last.get(vin))));
        last.forEach(
                (vin, event) -> {
                    if (event.state().isDone()) {
                        vehicles.putIfAbsent(vin, vehicle(vin, false, event));
                    }
                });
        return new ArrayList<>(vehicles.values());
    }

    private static Event weightier(Event before, Event after) {
        return before.state().isDone() && !after.state().isDone() ? before : after;
    }

    private static Vehicle vehicle(String vin, boolean isListed, @Nullable Event last) {
        return new Vehicle(vin, isListed, last == null ? State.OUTSTANDING : last.state(), last);
    }

    /**
     * How many vehicles stand how at the end of a day: cumulative, listed ones only where there is
     * a list.
     */
    public Progress progress(LocalDate day) {
        Map<State, Integer> counts = new EnumMap<>(State.class);
        int unlisted = 0;
        int involved = 0;
        for (Vehicle vehicle : on(day)) {
            if (!isCounted(vehicle)) {
                unlisted++;
                continue;
            }
            involved++;
            counts.merge(vehicle.state(), 1, Integer::sum);
        }
        return new Progress(campaign, day, involved, counts, unlisted);
    }

    /** Whether a vehicle counts as involved: where there is a list, only those that are on it. */
    public boolean isCounted(Vehicle vehicle) {
        return vehicle.isListed() || listed.isEmpty();
    }

    /** The day on which the first vehicle's owner was spoken to or the first job was done. */
    public Optional<LocalDate> begun() {
        return events.stream().map(Event::day).min(LocalDate::compareTo);
    }

    /**
     * How far a campaign is.
     *
     * @param involved the listed vehicles; those that were done where there is no list
     * @param unlisted vehicles that were done and are on no list, which count in nothing else
     */
    public record Progress(
            String campaign,
            LocalDate day,
            int involved,
            Map<State, Integer> counts,
            int unlisted) {
        /** How many stand so. */
        public int of(State state) {
            return counts.getOrDefault(state, 0);
        }

        /** How many nobody can reach any more. */
        public int unreachable() {
            return of(State.EXPORTED)
                    + of(State.STOLEN)
                    + of(State.SCRAPPED)
                    + of(State.UNREACHABLE);
        }

        /** How many may still come; those that declined so far are among them. */
        public int outstanding() {
            return involved - of(State.COMPLETED) - of(State.NOT_NEEDED) - unreachable();
        }
    }
}
