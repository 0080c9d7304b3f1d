package counterbench.acts.store;

import static counterbench.db.generated.Tables.JOBS_FACT;
import static counterbench.db.generated.Tables.KITS_FACT;
import static counterbench.db.generated.Tables.ORDERS_FACT;
import static counterbench.db.generated.Tables.RECEIPTS_FACT;

import counterbench.acts.CampaignNeed;
import counterbench.acts.JobState;
import counterbench.acts.KitListing;
import counterbench.acts.LooseNeed;
import counterbench.acts.Named;
import counterbench.acts.NextKit;
import counterbench.acts.OpenOrders;
import counterbench.acts.Situation;
import counterbench.campaign.KitTerms;
import counterbench.campaign.Pack;
import counterbench.db.Store;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.job.Requirement;
import counterbench.journal.store.AllPosted;
import counterbench.shared.Quantity;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jooq.DSLContext;

/** Works out what a campaign still needs at a site. */
public final class ReadNeed {
    private final Store store;
    private final Site site;
    private final Instant now;

    public ReadNeed(Store store, Site site, Instant now) {
        this.store = store;
        this.site = site;
        this.now = now;
    }

    /** What is read in one go. */
    private record Paper(OpenVehicles vehicles, Set<String> openJobs, OpenOrders orders) {}

    /**
     * The need of a campaign.
     *
     * @param pack its terms in force
     */
    public CampaignNeed of(Pack pack) {
        Paper paper = store.read(sql -> paper(sql, pack.campaign()));
        Situation situation =
                new ReadSituation(store).run(site, now, Named.NOTHING.withJobs(paper.openJobs()));
        Map<String, Map<String, Integer>> kitsOfJobs = new TreeMap<>();
        for (String job : paper.openJobs()) {
            situation
                    .findJob(job)
                    .filter(found -> found.job().isOpen())
                    .ifPresent(
                            found -> kitsOfJobs.put(job, new NextKit(situation, found).wanted()));
        }
        return new CampaignNeed(
                pack.campaign(),
                paper.vehicles().counts(),
                kitsOfJobs.size(),
                (int) kitsOfJobs.values().stream().filter(kits -> !kits.isEmpty()).count(),
                kits(pack, paper, kitsOfJobs),
                parts(situation, paper, kitsOfJobs));
    }

    private Paper paper(DSLContext sql, String campaign) {
        AllPosted posted = new AllPosted(sql);
        List<KeyedRows.AtSite> jobs =
                KeyedRows.read(sql, posted, FactKind.JOBS, JOBS_FACT.CAMPAIGN.eq(campaign));
        Set<String> open = new TreeSet<>();
        for (KeyedRows.AtSite job : jobs) {
            if (job.siteNo() == site.no() && job.row().text("outcome") == null) {
                open.add(Objects.requireNonNull(job.row().text("job")));
            }
        }
        return new Paper(OpenVehicles.read(sql, posted, campaign, jobs), open, orders(sql, posted));
    }

    private OpenOrders orders(DSLContext sql, AllPosted posted) {
        short siteNo = (short) site.no();
        List<OpenOrders.Order> orders = new ArrayList<>();
        KeyedRows.read(sql, posted, FactKind.ORDERS, ORDERS_FACT.SITE_NO.eq(siteNo)).stream()
                .map(KeyedRows.AtSite::row)
                .filter(row -> row.date("cancelled_on") == null)
                .forEach(row -> orders.add(order(row)));
        List<OpenOrders.Delivery> deliveries = new ArrayList<>();
        KeyedRows.read(sql, posted, FactKind.KITS, KITS_FACT.SITE_NO.eq(siteNo))
                .forEach(kit -> deliveries.add(delivery(kit.row(), "kit_part", Quantity.ONE)));
        KeyedRows.read(sql, posted, FactKind.RECEIPTS, RECEIPTS_FACT.SITE_NO.eq(siteNo))
                .forEach(r -> deliveries.add(delivery(r.row(), "part", quantity(r.row()))));
        return OpenOrders.of(orders, deliveries);
    }

    private static OpenOrders.Order order(FactRow row) {
        return new OpenOrders.Order(
                Objects.requireNonNull(row.text("order")),
                Objects.requireNonNull(row.text("part")),
                quantity(row),
                Objects.requireNonNull(row.date("ordered_on")),
                row.date("expected_on"));
    }

    private OpenOrders.Delivery delivery(FactRow row, String partHeading, Quantity quantity) {
        return new OpenOrders.Delivery(
                Objects.requireNonNull(row.text(partHeading)),
                quantity,
                site.dayOf(Objects.requireNonNull(row.time("received_at"))),
                row.text("document"));
    }

    private static Quantity quantity(FactRow row) {
        return new Quantity(Objects.requireNonNull(row.decimal("quantity")));
    }

    private List<CampaignNeed.OfKit> kits(
            Pack pack, Paper paper, Map<String, Map<String, Integer>> kitsOfJobs) {
        List<CampaignNeed.OfKit> needs = new ArrayList<>();
        for (KitTerms kit : pack.kits()) {
            List<KitListing> there = new ShelfKits(store, site, now).list(Optional.of(kit.part()));
            int expired = (int) there.stream().filter(k -> k.isExpired(site.dayOf(now))).count();
            needs.add(
                    new CampaignNeed.OfKit(
                            kit.part(),
                            kit.quantity(),
                            paper.vehicles().needing(kit.when()),
                            kitsOfJobs.values().stream()
                                    .mapToInt(wanted -> wanted.getOrDefault(kit.part(), 0))
                                    .sum(),
                            there.size() - expired,
                            expired,
                            paper.orders().quantityOf(kit.part()),
                            paper.orders().expectedOn(kit.part()).orElse(null)));
        }
        return needs;
    }

    private List<CampaignNeed.OfPart> parts(
            Situation situation, Paper paper, Map<String, Map<String, Integer>> kitsOfJobs) {
        Map<String, Quantity> needed = new TreeMap<>();
        Map<String, Set<String>> numbers = new TreeMap<>();
        Map<String, List<String>> jobs = new TreeMap<>();
        kitsOfJobs.forEach(
                (name, kits) -> {
                    JobState job = situation.job(name);
                    LooseNeed.of(job, kits, now)
                            .forEach(
                                    (part, quantity) -> {
                                        needed.merge(part, quantity, Quantity::plus);
                                        numbers.put(part, numbers(job, part));
                                        jobs.computeIfAbsent(part, p -> new ArrayList<>())
                                                .add(name);
                                    });
                });
        Set<String> all = new TreeSet<>();
        numbers.values().forEach(all::addAll);
        Situation shelves =
                all.isEmpty()
                        ? situation
                        : new ReadSituation(store).run(site, now, Named.NOTHING.withParts(all));
        return needed.entrySet().stream()
                .map(
                        need ->
                                part(
                                        need,
                                        numbers.getOrDefault(need.getKey(), Set.of()),
                                        shelves,
                                        paper.orders(),
                                        jobs.getOrDefault(need.getKey(), List.of())))
                .toList();
    }

    private static Set<String> numbers(JobState job, String part) {
        Set<String> numbers = new TreeSet<>(Set.of(part));
        job.requirements()
                .flatMap(required -> required.of(part))
                .map(Requirement::replaces)
                .ifPresent(numbers::addAll);
        return numbers;
    }

    private static CampaignNeed.OfPart part(
            Map.Entry<String, Quantity> need,
            Set<String> numbers,
            Situation shelves,
            OpenOrders orders,
            List<String> jobs) {
        Quantity inStore =
                numbers.stream()
                        .map(number -> shelves.shelf(number).timeline().balance())
                        .reduce(Quantity.ZERO, Quantity::plus);
        return new CampaignNeed.OfPart(
                need.getKey(),
                need.getValue(),
                inStore,
                orders.quantityOf(need.getKey()),
                orders.expectedOn(need.getKey()).orElse(null),
                jobs);
    }
}
