package counterbench.facts;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a fact names of which a rule may judge otherwise with it than without it.
 *
 * @param names the names, as they stand in the fact; credits are named by their remittance
 * @param all whether any job may be judged otherwise, since the fact holds for all
 */
public record Concern(Map<Thing, String> names, boolean all) {
    public Concern {
        names = Collections.unmodifiableMap(names);
    }

    /** That of a fact. */
    public static Concern of(FactRow row) {
        return switch (row.kind()) {
            case JOBS -> named(row, Thing.JOB, Thing.VIN);
            case MARKS -> named(row, Thing.JOB);
            case ISSUES, USES -> ofHardware(row);
            case CLAIMS -> named(row, Thing.JOB, Thing.CLAIM);
            case CORES -> named(row, Thing.JOB, Thing.CORE, Thing.SHIPMENT);
            case KITS -> named(row, Thing.KIT);
            case RECEIPTS -> named(row, Thing.PART);
            case MOVES -> named(row, Thing.KIT, Thing.PART);
            case COUNTS -> named(row, row.text("kit") == null ? Thing.PART : Thing.KIT);
            case ACKNOWLEDGEMENTS -> named(row, Thing.CORE, Thing.SERIAL, Thing.SHIPMENT);
            case CREDITS -> named(row, Thing.CLAIM, Thing.CORE, Thing.CREDIT);
            case MATCHES -> named(row, Thing.CLAIM, Thing.CREDIT);
            case VEHICLES, INSTRUMENTS, CALIBRATIONS, PARTS_LIST, SITES, PACKS, REVERSALS ->
                    new Concern(Map.of(), true);
            case PEOPLE,
                    RATES,
                    ORDERS,
                    CONTACTS,
                    SHIPMENTS,
                    SETTLEMENTS,
                    OVERRIDES,
                    SEALS,
                    PINS,
                    ROLE_CHANGES ->
                    // No rule reads these.
                    new Concern(Map.of(), false);
        };
    }

    /** A part is named where it comes from the shelf or goes back to it, loose. */
    private static Concern ofHardware(FactRow row) {
        boolean movesLoose =
                row.kind() == FactKind.ISSUES || "put-back".equals(row.text("condition"));
        return movesLoose && row.text("kit") == null
                ? named(row, Thing.JOB, Thing.PART)
                : named(row, Thing.JOB, Thing.KIT);
    }

    private static Concern named(FactRow row, Thing... things) {
        Map<Thing, String> names = new EnumMap<>(Thing.class);
        for (Thing thing : things) {
            String name = row.text(heading(thing));
            if (name != null) {
                names.put(thing, name);
            }
        }
        return new Concern(names, false);
    }

    private static String heading(Thing thing) {
        return switch (thing) {
            case JOB -> "job";
            case KIT -> "kit";
            case PART -> "part";
            case VIN -> "vin";
            case CORE -> "core";
            case SERIAL -> "serial";
            case SHIPMENT -> "shipment";
            case CLAIM -> "claim";
            case CREDIT -> "remittance";
        };
    }

    /** The thing of that sort that the fact names, if it names one. */
    public Optional<String> name(Thing thing) {
        return Optional.ofNullable(names.get(thing));
    }

    /** Whether the fact names a thing of that sort. */
    public boolean isOf(Thing thing) {
        return names.containsKey(thing);
    }
}
