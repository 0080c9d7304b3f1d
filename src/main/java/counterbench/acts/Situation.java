package counterbench.acts;

import counterbench.review.Component;
import counterbench.review.Terms;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.stock.Ledger;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What an act is decided on: the jobs and kits that it names, each with all that concerns it, and
 * the loose parts.
 */
public final class Situation {
    private final Site site;
    private final Instant now;
    private final Terms terms;
    private final List<Component> components;
    private final Map<Component, Ledger> ledgers = new HashMap<>();
    private final Map<String, Shelf> shelves;
    private final Directory directory;

    /**
     * @param components those of the named jobs and kits
     * @param shelves the named loose parts
     * @param directory asked only where a name is not known
     */
    public Situation(
            Site site,
            Instant now,
            Terms terms,
            List<Component> components,
            Map<String, Shelf> shelves,
            Directory directory) {
        this.site = site;
        this.now = now;
        this.terms = terms;
        this.components = List.copyOf(components);
        this.shelves = Map.copyOf(shelves);
        this.directory = directory;
        this.components.forEach(c -> ledgers.put(c, Ledger.of(c.facts())));
    }

    /** The site. */
    public Site site() {
        return site;
    }

    /** The time of the clock. */
    public Instant now() {
        return now;
    }

    /** The site's calendar day. */
    public LocalDate today() {
        return site.dayOf(now);
    }

    /** Packs, parts, instruments, receipts. */
    public Terms terms() {
        return terms;
    }

    /** The components of all that is named. */
    public List<Component> components() {
        return components;
    }

    /** All names of the site. */
    public Directory directory() {
        return directory;
    }

    private Ledger ledger(Component component) {
        return ledgers.getOrDefault(component, Ledger.of(component.facts()));
    }

    /** The job of that name, if there is one. */
    public Optional<JobState> findJob(String job) {
        return components.stream()
                .flatMap(
                        c ->
                                c.jobs().stream()
                                        .filter(f -> f.name().equals(job) && f.job() != null)
                                        .map(f -> new JobState(site, now, terms, c, ledger(c), f)))
                .findFirst();
    }

    /**
     * The job of that name.
     *
     * @throws Refused if there is none
     */
    public JobState job(String job) {
        return findJob(job)
                .orElseThrow(() -> unknown("job", job, directory.jobs(), "open it: job open"));
    }

    /** The kit of that serial, if the site ever had it. */
    public Optional<KitState> findKit(String kit) {
        return components.stream()
                .filter(c -> c.kits().contains(kit))
                .flatMap(c -> KitState.of(kit, c, ledger(c)).stream())
                .findFirst();
    }

    /**
     * The kit of that serial.
     *
     * @throws Refused if the site never had it
     */
    public KitState kit(String kit) {
        return findKit(kit)
                .orElseThrow(
                        () -> unknown("kit", kit, directory.kits(), "receive it: kit receive"));
    }

    /** The core of that tag, if one was removed. */
    public Optional<CoreCase> findCore(String tag) {
        return components.stream()
                .flatMap(c -> c.jobs().stream())
                .filter(file -> file.job() != null)
                .map(file -> findJob(file.name()).orElseThrow())
                .flatMap(job -> job.cores().stream().map(core -> new CoreCase(job, core)))
                .filter(
                        found ->
                                found.core().core().equals(tag)
                                        && found.core().removedAt().isPresent())
                .findFirst();
    }

    /**
     * The core of that tag.
     *
     * @throws Refused if none was removed
     */
    public CoreCase core(String tag) {
        return findCore(tag).orElseThrow(() -> unknownCore(tag));
    }

    private Refused unknownCore(String tag) {
        return directory.coresAway().stream()
                .filter(away -> away.tag().equals(tag) && away.where().site().equals(site.site()))
                .findFirst()
                .map(Situation::strange)
                .orElseGet(
                        () ->
                                unknown(
                                        "core",
                                        tag,
                                        directory.cores(),
                                        "record its removal: core remove"));
    }

    /** Another site's core is worked on by the book of that site. */
    private static Refused strange(CoreAway away) {
        String owner = away.owner().site();
        boolean coming = away.where().isOnTheWay();
        return new Refused(
                "core \"" + away.tag() + "\"",
                "it is a core of site " + owner + (coming ? " on its way here" : " that lies here"),
                coming
                        ? "take it in first: core arrive " + away.tag()
                        : "its book is kept there: add --site " + owner);
    }

    /** Every removed core of what is named, by tag. */
    public List<CoreCase> cores() {
        return components.stream()
                .flatMap(c -> CoreCase.allOf(site, now, terms, c).stream())
                .sorted(Comparator.comparing((CoreCase found) -> found.core().core()))
                .toList();
    }

    /**
     * The shipment of that name, with the cores on it.
     *
     * @throws Refused if there is none
     */
    public ShipmentState shipment(String shipment) {
        return directory
                .shipment(shipment)
                .map(found -> ShipmentState.of(found, cores()))
                .orElseThrow(
                        () ->
                                unknown(
                                        "shipment",
                                        shipment,
                                        directory.shipments(),
                                        "open it: shipment open"));
    }

    /** What lies loose in the store of a named part. */
    public Shelf shelf(String part) {
        return shelves.getOrDefault(part, Shelf.empty(part));
    }

    /** The named loose parts. */
    public Set<String> shelves() {
        return shelves.keySet();
    }

    private static Refused unknown(
            String what, String name, Collection<String> known, String otherwise) {
        return new Refused(
                what + " \"" + name + "\"",
                "there is no such " + what,
                NearMatch.of(name, known)
                        .map(near -> "did you mean " + near + "?")
                        .orElse(otherwise));
    }
}
