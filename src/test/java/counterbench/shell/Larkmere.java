package counterbench.shell;

import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.db.TestStores;
import counterbench.intake.ImportReport;
import counterbench.intake.store.ImportPaper;
import counterbench.intake.store.LoadPack;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.people.store.JooqSites;
import counterbench.shared.Site;
import counterbench.shared.TestSites;
import counterbench.sheets.poi.PoiSheets;
import counterbench.shell.campaign.CampaignCheckCommand;
import counterbench.shell.campaign.CampaignListCommand;
import counterbench.shell.campaign.CampaignLoadCommand;
import counterbench.shell.campaign.CampaignShowCommand;
import counterbench.shell.intake.ImportCommand;
import counterbench.shell.month.BalanceCommand;
import counterbench.shell.month.ReconcileCommand;
import counterbench.shell.review.FindingSettleCommand;
import counterbench.shell.review.FindingShowCommand;
import counterbench.shell.review.ReviewCommand;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** The invented garage of the demo data with its two yards, and a shell that looks at it. */
public final class Larkmere implements AutoCloseable {
    /** The moment as of which the demo data's findings are listed. */
    public static final Instant AS_OF = Instant.parse("2026-04-10T17:00:00Z");

    /** Where the demo data lies. */
    public static final Path DATA = Path.of("demo-data");

    /** The yard in the north. */
    public static final Site NORTH = TestSites.NORTH;

    /** The yard in the south. */
    public static final Site SOUTH =
            new Site(2, "SOUTH", "South garage", NORTH.zone(), NORTH.currency(), NORTH.patience());

    /** Who keeps the parts counter in the north. */
    public static final Person HAL = new Person("Hal", Set.of(Role.PARTS));

    /** A technician in the north. */
    public static final Person OTIS = new Person("Otis", Set.of(Role.TECHNICIAN));

    /** Who keeps the warranty desk. */
    public static final Person QUINN = new Person("Quinn", Set.of(Role.WARRANTY));

    private static final String LEAD = "Maren";

    /** Stores that are closed and copied, by their kind and what is in them. */
    private static final Map<String, StoreAddress> FILLED = new ConcurrentHashMap<>();

    private final Store store;

    private Larkmere(Store store) {
        this.store = store;
    }

    /** Two yards that are set up and have nothing yet. */
    public static Larkmere empty(TestStores kind) {
        return empty(kind.open());
    }

    private static Larkmere empty(Store store) {
        Larkmere larkmere = new Larkmere(store);
        larkmere.store.run(sql -> List.of(NORTH, SOUTH).forEach(s -> JooqSites.add(sql, s)));
        return larkmere;
    }

    /** The same, with the packs and with people. */
    public static Larkmere withPacks(TestStores kind) {
        return copy(kind, "packs", Larkmere::withPacks);
    }

    /** The same in a store that is open. */
    public static Larkmere withPacks(Store store) {
        Larkmere larkmere = empty(store);
        larkmere.loadPacks();
        larkmere.take("common", NORTH);
        return larkmere;
    }

    /** All of the demo data. */
    public static Larkmere full(TestStores kind) {
        return copy(kind, "full", Larkmere::full);
    }

    private static Larkmere full(Store store) {
        Larkmere larkmere = withPacks(store);
        larkmere.take("north", NORTH);
        larkmere.take("south", SOUTH);
        return larkmere;
    }

    /** A store of its own for each test; what is in it was read in once for all of them. */
    private static Larkmere copy(TestStores kind, String what, Consumer<Store> fill) {
        StoreAddress filled =
                FILLED.computeIfAbsent(
                        kind + " " + what,
                        key -> {
                            StoreAddress address = kind.address();
                            try (Store store = TestStores.open(address)) {
                                fill.accept(store);
                            }
                            return address;
                        });
        return new Larkmere(TestStores.open(kind.copyOf(filled)));
    }

    private void loadPacks() {
        try (Stream<Path> packs = Files.list(DATA.resolve("packs"))) {
            LoadPack load = new LoadPack(store, PoiSheets.files());
            packs.sorted().forEach(pack -> load.run(pack, NORTH, LEAD, AS_OF));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void take(String folder, Site site) {
        var request =
                new ImportPaper.Request(DATA.resolve(folder), site, LEAD, AS_OF, false, false);
        ImportReport report = new ImportPaper(store, PoiSheets.files()).run(request, n -> {});
        if (report.isRefused()) {
            throw new IllegalStateException(report.problems().toString());
        }
    }

    /** The yards of a store that has them already. */
    public static Larkmere in(Store store) {
        return new Larkmere(store);
    }

    /** The store. */
    public Store store() {
        return store;
    }

    /** A shell with nobody signed in. */
    public FakeShell shell() {
        SiteChoice sites = new SiteChoice(() -> store);
        return new FakeShell(
                new ImportCommand(() -> store, sites),
                new CampaignCheckCommand(),
                new CampaignLoadCommand(() -> store, sites),
                new CampaignListCommand(() -> store),
                new CampaignShowCommand(() -> store),
                new ReviewCommand(() -> store, sites),
                new ReconcileCommand(() -> store, sites),
                new BalanceCommand(() -> store, sites),
                new FindingShowCommand(() -> store, sites),
                new FindingSettleCommand(() -> store, sites));
    }

    /** A shell with these commands, in which that person is signed in at the north yard. */
    public FakeShell shellOf(Person person, BaseCommand... commands) {
        FakeShell shell = new FakeShell(commands).at(AS_OF);
        shell.session().signIn(person);
        shell.session().choose(NORTH.site());
        return shell;
    }

    /** How a command finds its site. */
    public SiteChoice sites() {
        return new SiteChoice(() -> store);
    }

    /** A shell in which somebody of these roles is signed in, at the north yard. */
    public FakeShell shellOf(String name, Role... roles) {
        FakeShell shell = shell();
        shell.session().signIn(new Person(name, Set.of(roles)));
        shell.session().choose(NORTH.site());
        return shell;
    }

    @Override
    public void close() {
        store.close();
    }
}
