package counterbench.shell.demo;

import counterbench.acts.rack.Ship;
import counterbench.db.Store;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.intake.ImportReport;
import counterbench.intake.store.ImportPaper;
import counterbench.intake.store.LoadPack;
import counterbench.journal.Draft;
import counterbench.journal.store.JooqJournal;
import counterbench.people.NewSite;
import counterbench.people.Person;
import counterbench.people.Pin;
import counterbench.people.Role;
import counterbench.people.store.ChangePeople;
import counterbench.people.store.PinHash;
import counterbench.people.store.SetUpStore;
import counterbench.shared.Progress;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.sheets.SheetFiles;
import counterbench.sheets.poi.PoiSheets;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Fills a store with the invented garage: two yards, their people, their packs, their paper. */
final class DemoGarage {
    static final Person LEAD = new Person("Maren", Set.of(Role.LEAD));
    static final Pin PIN = new Pin("2604");

    /** One of each role besides the lead, who can sign in with the same PIN. */
    static final List<String> COLLEAGUES = List.of("Hal", "Otis", "Quinn");

    private static final String SOURCE = "demo";

    private final Store store;
    private final Path paper;
    private final Instant now;
    private final Progress progress;
    private final SheetFiles files = PoiSheets.files();
    private final Supplier<PinHash> pin;
    private final Aside aside;

    /**
     * A garage that is to be filled.
     *
     * @param pin of everybody who can sign in
     * @param aside where one yard's paper is read while this reads the other's
     */
    DemoGarage(
            Store store,
            Path paper,
            Instant now,
            Progress progress,
            Supplier<PinHash> pin,
            Aside aside) {
        this.aside = aside;
        this.store = store;
        this.pin = pin;
        this.paper = paper;
        this.now = now;
        this.progress = progress;
    }

    /** Begins to hash the one PIN of everybody, which is slow on purpose. */
    static Supplier<PinHash> pin(Aside aside) {
        return aside.begin(() -> PinHash.of(PIN));
    }

    /** The two yards, filled. */
    List<Site> fill() throws IOException {
        SetUpStore setUp = new SetUpStore(store);
        NewSite first = yard("NORTH", "North yard");
        Site north = setUp.first(first, LEAD.name(), pin.get(), now, SOURCE).site();
        Site south = setUp.further(yard("SOUTH", "South yard"), LEAD, now, SOURCE).site();
        load(north);
        take("common", north, progress);
        takeIn(north);
        Supplier<Site> other = aside.begin(() -> take("south", south, Progress.SILENT));
        take("north", north, progress);
        letGo(other.get());
        return List.of(north, south);
    }

    /** A shipment with a stop on it, which left by the lead's word; no sheet can say that. */
    private void letGo(Site south) {
        FactRow override =
                FactRow.of(FactKind.OVERRIDES)
                        .with("gate", Ship.GATE)
                        .with("subject", "SH-S04")
                        .with("at", Instant.parse("2026-02-26T15:30:00-06:00"))
                        .with("reason", "the other cap cracked; it stands upright in a closed tote")
                        .with("findings", "core SC-0020: plugs-short, 1 of 2 plugs are logged");
        new JooqJournal(store)
                .record(Draft.of(south, now, LEAD.name(), "ship", SOURCE), List.of(override));
    }

    private static NewSite yard(String site, String name) {
        return new NewSite(
                site, name + " of Larkmere", "America/Chicago", "USD", Site.Patience.USUAL);
    }

    private void load(Site site) throws IOException {
        progress.begin("loading packs", 0);
        LoadPack load = new LoadPack(store, files);
        try (Stream<Path> packs = Files.list(paper.resolve("packs"))) {
            for (Path pack : packs.sorted().toList()) {
                load.run(pack, site, LEAD.name(), now);
                progress.step(1);
            }
        }
    }

    private void takeIn(Site site) {
        var by = new ChangePeople.By(LEAD, site, now, SOURCE);
        COLLEAGUES.forEach(name -> new ChangePeople(store).pin(by, name, pin.get()));
    }

    private Site take(String folder, Site site, Progress progress) {
        progress.begin("reading " + folder, 0);
        var request =
                new ImportPaper.Request(
                        paper.resolve(folder), site, LEAD.name(), now, false, false);
        ImportReport report = new ImportPaper(store, files).run(request, n -> progress.step(1));
        if (report.isRefused()) {
            throw new Refused(report.problems().stream().map(p -> p.problem()).toList());
        }
        return site;
    }
}
