package counterbench.shell.counter;

import counterbench.acts.KitListing;
import counterbench.acts.KitPlace;
import counterbench.acts.store.ShelfKits;
import counterbench.acts.store.SiteKits;
import counterbench.campaign.KitTerms;
import counterbench.campaign.Packs;
import counterbench.campaign.store.PackBook;
import counterbench.db.Store;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.acts.LiveNames;
import counterbench.shell.campaign.KnownCampaign;
import counterbench.shell.month.ReadJobs;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Lists kits: those on the shelf, or those of another state. */
public final class KitListCommand extends BaseCommand {
    private static final Option<String> CAMPAIGN =
            Option.of("campaign", "CAMPAIGN", Readings.TEXT, "only kits that this campaign needs");
    private static final Option<String> PART =
            Option.of("part", "KITPART", Readings.TEXT, "only kits of this part");
    private static final Option<KitPlace> STATE =
            Option.of(
                    "state",
                    "STATE",
                    Readings.oneOf(KitPlace.class),
                    "where they are; on-shelf unless said");
    private static final Option<Boolean> ALL = Option.flag("all", "whatever their state");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public KitListCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)));
        this.store = store;
        this.sites = sites;
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("kit list", Group.PARTS_COUNTER, "List kits, first to expire first")
                .takes(
                        CAMPAIGN.completedBy(names.campaigns()),
                        PART.completedBy(names.kitParts()),
                        STATE,
                        ALL,
                        Options.SITE.completedBy(names.sites()))
                .printsRows()
                .example("kit list --campaign HB-0417")
                .example("kit list --state issued --format csv");
    }

    @Override
    protected Status run(Invocation in) {
        if (in.has(STATE) && in.has(ALL)) {
            throw in.wrong("--all shows every state; leave out --state");
        }
        Site site = sites.of(in);
        Predicate<KitListing> wanted = wanted(in, new PackBook(store.get()).all());
        List<KitListing> kits = kits(in, site, wanted);
        try (Rows rows =
                in.rows(
                        Column.text("kit"),
                        Column.text("kit_part"),
                        Column.text("lot").asSpare(),
                        Column.text("expires_on"),
                        Column.text("received_on").asSpare(),
                        Column.text("state"),
                        Column.text("where"),
                        Column.text("expired"))) {
            kits.forEach(kit -> add(rows, site, site.dayOf(in.now()), kit));
        }
        return Status.DONE;
    }

    private List<KitListing> kits(Invocation in, Site site, Predicate<KitListing> wanted) {
        KitPlace state = in.find(STATE).orElse(KitPlace.ON_SHELF);
        if (state == KitPlace.ON_SHELF && !in.has(ALL)) {
            return new ShelfKits(store.get(), site, in.now())
                    .list(in.find(PART)).stream().filter(wanted).toList();
        }
        return new SiteKits(store.get())
                .list(
                        site,
                        in.now(),
                        wanted.and(kit -> in.has(ALL) || kit.place() == state),
                        ReadJobs.shown(in, site));
    }

    private static Predicate<KitListing> wanted(Invocation in, Packs packs) {
        Optional<String> part = in.find(PART);
        part.ifPresent(named -> mustBeKnown(named, kitParts(packs, packs.campaigns())));
        Optional<Set<String>> ofCampaign =
                in.find(CAMPAIGN)
                        .map(named -> KnownCampaign.of(named, packs))
                        .map(campaign -> kitParts(packs, List.of(campaign)));
        return kit ->
                (part.isEmpty() || part.get().equals(kit.kit().kitPart()))
                        && (ofCampaign.isEmpty() || ofCampaign.get().contains(kit.kit().kitPart()));
    }

    private static Set<String> kitParts(Packs packs, Collection<String> campaigns) {
        return campaigns.stream()
                .flatMap(campaign -> packs.revisions(campaign).stream())
                .flatMap(pack -> pack.kits().stream())
                .map(KitTerms::part)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static void mustBeKnown(String part, Set<String> known) {
        if (!known.contains(part)) {
            throw new Refused(
                    "kit part \"" + part + "\"",
                    "no loaded pack has a kit of that part",
                    NearMatch.of(part, known)
                            .map(near -> "did you mean " + near + "?")
                            .orElse("there are " + String.join(", ", known)));
        }
    }

    private static void add(Rows rows, Site site, LocalDate today, KitListing kit) {
        boolean expired = kit.place() == KitPlace.ON_SHELF && kit.isExpired(today);
        rows.add(
                kit.serial(),
                kit.kit().kitPart(),
                kit.kit().lot(),
                kit.kit().expiresOn(),
                site.dayOf(kit.kit().receivedAt()),
                word(kit.place()),
                kit.where(),
                expired ? "yes" : null);
    }

    private static String word(KitPlace place) {
        return place.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
