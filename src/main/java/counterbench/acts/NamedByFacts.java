package counterbench.acts;

import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** What facts name of which a rule may judge otherwise without them. */
public final class NamedByFacts {
    private final Set<String> jobs = new TreeSet<>();
    private final Set<String> kits = new TreeSet<>();
    private final Set<String> parts = new TreeSet<>();
    private final Set<String> cores = new TreeSet<>();
    private final Set<String> shipments = new TreeSet<>();
    private final Set<String> claims = new TreeSet<>();
    private final Set<String> credits = new TreeSet<>();
    private boolean all;

    /** Adds what a fact names. */
    public void add(FactRow row) {
        switch (row.kind()) {
            case JOBS, MARKS, CLAIMS -> add(jobs, row.text("job"));
            case ISSUES, USES -> addHardware(row);
            case KITS -> add(kits, row.text("kit"));
            case RECEIPTS -> add(parts, row.text("part"));
            case MOVES, COUNTS -> addShelf(row);
            case CORES -> {
                add(cores, row.text("core"));
                add(jobs, row.text("job"));
            }
            case ACKNOWLEDGEMENTS -> addAcknowledged(row);
            case CREDITS -> {
                add(claims, row.text("claim"));
                add(cores, row.text("core"));
                add(credits, row.text("remittance"));
            }
            case MATCHES -> {
                add(claims, row.text("claim"));
                add(credits, row.text("remittance"));
            }
            case VEHICLES, INSTRUMENTS, CALIBRATIONS, PARTS_LIST, PACKS -> all = true;
            case PEOPLE,
                    RATES,
                    ORDERS,
                    CONTACTS,
                    SHIPMENTS,
                    SITES,
                    SETTLEMENTS,
                    OVERRIDES,
                    SEALS,
                    REVERSALS,
                    PINS,
                    ROLE_CHANGES -> {
                // No rule reads these.
            }
        }
    }

    private void addHardware(FactRow row) {
        add(jobs, row.text("job"));
        add(kits, row.text("kit"));
        boolean isLoose = row.text("kit") == null;
        boolean movesStore =
                row.kind() == FactKind.ISSUES || "put-back".equals(row.text("condition"));
        add(parts, isLoose && movesStore ? row.text("part") : null);
    }

    private void addShelf(FactRow row) {
        add(kits, row.text("kit"));
        add(parts, row.text("kit") == null ? row.text("part") : null);
    }

    /** A row that names no core may speak of every core of its shipment. */
    private void addAcknowledged(FactRow row) {
        add(cores, row.text("core"));
        add(shipments, row.text("core") == null ? row.text("shipment") : null);
    }

    private static void add(Set<String> names, @Nullable String name) {
        if (name != null) {
            names.add(name);
        }
    }

    /** The same as something to look up; claims are left out. */
    public Named named() {
        return new Named(jobs, kits, parts, cores, shipments);
    }

    /** Numbers of claims. */
    public Set<String> claims() {
        return Set.copyOf(claims);
    }

    /** Remittances of which lines are named. */
    public Set<String> credits() {
        return Set.copyOf(credits);
    }

    /** Whether no rule would judge otherwise. */
    public boolean isNothing() {
        return !all && claims.isEmpty() && credits.isEmpty() && named().equals(Named.NOTHING);
    }

    /** Whether any job may be judged otherwise, since they hold for all. */
    public boolean concernAll() {
        return all;
    }
}
