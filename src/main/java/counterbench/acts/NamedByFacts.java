package counterbench.acts;

import counterbench.facts.Concern;
import counterbench.facts.FactRow;
import counterbench.facts.Thing;
import java.util.Set;
import java.util.TreeSet;

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
        Concern concern = Concern.of(row);
        all |= concern.all();
        concern.name(Thing.JOB).ifPresent(jobs::add);
        concern.name(Thing.KIT).ifPresent(kits::add);
        concern.name(Thing.CORE).ifPresent(cores::add);
        concern.name(Thing.CLAIM).ifPresent(claims::add);
        concern.name(Thing.CREDIT).ifPresent(credits::add);
        if (!concern.isOf(Thing.KIT)) {
            concern.name(Thing.PART).ifPresent(parts::add);
        }
        // A row that names no core may speak of every core of its shipment.
        if (!concern.isOf(Thing.CORE)) {
            concern.name(Thing.SHIPMENT).ifPresent(shipments::add);
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
