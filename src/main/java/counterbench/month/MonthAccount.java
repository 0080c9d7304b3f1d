package counterbench.month;

import counterbench.campaign.Packs;
import counterbench.job.rules.HardwareFacts;
import counterbench.journal.SealedMonths;
import counterbench.shared.Site;
import counterbench.stock.Account;
import counterbench.stock.Count;
import counterbench.stock.JobEnd;
import counterbench.stock.Ledger;
import counterbench.stock.Move;
import counterbench.stock.StoreTimeline;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The account of a site's month, for every campaign at once: give it each component, then once what
 * lies loose in the store, then ask.
 *
 * <p>A job belongs to the month of its completion, in the site's zone. Goods are those of the whole
 * site; a campaign shows its own parts of them.
 */
public final class MonthAccount {
    private final Site site;
    private final YearMonth month;
    private final SealedMonths sealed;
    private final Goods goods;
    private final SortedMap<String, CampaignParts> parts = new TreeMap<>();
    private final SortedMap<String, Consumption> consumption = new TreeMap<>();
    private final List<Move> storeMoves = new ArrayList<>();

    /** Of a site that never sealed a month. */
    public MonthAccount(Site site, YearMonth month, Packs packs) {
        this(site, month, packs, SealedMonths.NONE);
    }

    /**
     * @param sealed the months that are closed; where the month before is, give what the sealed
     *     facts come to by {@link #opening}
     */
    public MonthAccount(Site site, YearMonth month, Packs packs, SealedMonths sealed) {
        this.sealed = sealed;
        this.site = site;
        this.month = month;
        this.goods = new Goods(month);
        for (String campaign : packs.campaigns()) {
            CampaignParts shown = CampaignParts.of(packs.revisions(campaign));
            parts.put(campaign, shown);
            consumption.put(campaign, new Consumption(shown));
        }
    }

    /**
     * Adds the moves and the completed jobs of a component.
     *
     * @param completed the hardware of its completed jobs, whenever they were completed
     */
    public void addComponent(Ledger ledger, Collection<HardwareFacts> completed) {
        addComponent(ledger, completed, List.of());
    }

    /**
     * Adds the moves and the completed jobs of a component.
     *
     * @param completed the hardware of its completed jobs, whenever they were completed
     * @param ends where the journal says that they were
     */
    public void addComponent(
            Ledger ledger, Collection<HardwareFacts> completed, Collection<JobEnd> ends) {
        ledger.moves().forEach(this::addMove);
        for (HardwareFacts facts : completed) {
            if (monthOf(facts, ends).equals(Optional.of(month))) {
                String campaign = facts.judged().job().campaign();
                table(campaign)
                        .add(facts.judged().job().job(), PartsOnJob.of(facts, ledger.moves()));
            }
        }
    }

    private Optional<YearMonth> monthOf(HardwareFacts facts, Collection<JobEnd> ends) {
        String job = facts.judged().job().job();
        long entry =
                ends.stream()
                        .filter(end -> end.job().equals(job))
                        .mapToLong(end -> end.address().entry())
                        .findFirst()
                        .orElse(0);
        return facts.judged().completion().map(at -> sealed.booked(site.monthOf(at), entry));
    }

    /**
     * The month's opening, where the month before is sealed: give it what was known at the seal,
     * and nothing that was recorded since changes what the sealed month ended with.
     */
    public SealedOpening opening() {
        return new SealedOpening(site, month, goods);
    }

    /** Adds the moves of the loose store and its counts; call it once, after all components. */
    public void addStore(Ledger store, Collection<Count> counts) {
        store.moves().forEach(this::addMove);
        StoreTimeline.ofAll(storeMoves, counts).values().stream()
                .flatMap(timeline -> timeline.countMoves().stream())
                .forEach(this::book);
        counts.forEach(count -> goods.addCount(count, booked(count)));
    }

    private YearMonth booked(Count count) {
        return sealed.booked(site.monthOf(count.countedAt()), count.address().entry());
    }

    private void addMove(Move move) {
        if (move.touches(Account.STORE)) {
            storeMoves.add(move);
        }
        book(move);
    }

    private void book(Move move) {
        YearMonth happened = site.monthOf(move.at());
        if (sealed.before(month).isEmpty()) {
            goods.add(move, happened);
        } else if (!happened.isAfter(month)) {
            goods.addUntil(move);
        }
    }

    private Consumption table(String campaign) {
        return consumption.computeIfAbsent(
                campaign,
                c -> new Consumption(new CampaignParts(new TreeSet<>(), new TreeSet<>())));
    }

    /** The campaigns of which there are packs, sorted. */
    public NavigableSet<String> campaigns() {
        return new TreeSet<>(parts.keySet());
    }

    /** What the campaign's jobs of the month consumed, by part number. */
    public List<ConsumptionRow> consumption(String campaign) {
        return table(campaign).rows();
    }

    /** Where the campaign's parts came from and went in the month, by part number. */
    public List<GoodsRow> goods(String campaign) {
        return goods.rows(shown(campaign));
    }

    /** Whether any job of the campaign, or any count of its parts, is one to look at. */
    public boolean hasSomethingAmiss(String campaign) {
        return consumption(campaign).stream().anyMatch(row -> !row.jobs().isEmpty())
                || goods(campaign).stream().anyMatch(GoodsRow::isUnexplained);
    }

    /** Every part that any campaign shows or that ever moved, by part number. */
    public List<GoodsRow> allGoods() {
        NavigableSet<String> all = new TreeSet<>(goods.parts());
        campaigns().forEach(campaign -> all.addAll(shown(campaign)));
        return goods.rows(all);
    }

    private NavigableSet<String> shown(String campaign) {
        return parts.getOrDefault(campaign, new CampaignParts(new TreeSet<>(), new TreeSet<>()))
                .forGoods(goods.parts(), table(campaign).fittedParts());
    }
}
