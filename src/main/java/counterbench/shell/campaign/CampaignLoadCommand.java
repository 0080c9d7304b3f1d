package counterbench.shell.campaign;

import counterbench.campaign.Pack;
import counterbench.campaign.yaml.PackProblem;
import counterbench.campaign.yaml.PackReading;
import counterbench.db.Store;
import counterbench.facts.FactKind;
import counterbench.intake.ImportReport;
import counterbench.intake.store.LoadPack;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.sheets.poi.PoiSheets;
import counterbench.shell.Argument;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Options;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.intake.RefusedRows;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Loads packs with their lists of vehicles, the oldest revision first. */
public final class CampaignLoadCommand extends BaseCommand {
    private static final Argument<Path> PACK =
            Argument.of("PACK", Readings.PATH, "a pack, or a folder of packs").asRepeatable();
    private static final Comparator<ReadFile> OLDEST_FIRST =
            Comparator.comparing((ReadFile read) -> read.pack().inForceFrom())
                    .thenComparing(read -> read.pack().campaign())
                    .thenComparing(read -> read.pack().revision());

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public CampaignLoadCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("campaign load", Group.CAMPAIGNS, "Load packs and their vehicle lists")
                        .takes(PACK, Options.SITE)
                        .example("campaign load QM-26-014-B.yaml")
                        .note(
                                "Packs belong to all sites. Loading the same pack again does"
                                        + " nothing; changed terms need a revision of their own."));
        this.store = store;
        this.sites = sites;
    }

    /** A pack and the file that it was read from. */
    private record ReadFile(Path file, Pack pack) {}

    @Override
    protected Status run(Invocation in) {
        Person person = in.person();
        person.mustActAs(Role.WARRANTY, in.commandName());
        List<ReadFile> packs = read(in);
        Site site = sites.named(in).get(0);
        LoadPack load = new LoadPack(store.get(), PoiSheets.files());
        if (packs.size() > 1) {
            tryOut(packs, load, site, in);
        }
        for (ReadFile read : packs) {
            in.progress().begin("loading " + read.file().getFileName(), 0);
            show(in, site, read, load.run(read.file(), site, person.name(), in.now()));
        }
        return Status.DONE;
    }

    /** Of several packs all are loaded or none; one is so by itself. */
    private static void tryOut(List<ReadFile> packs, LoadPack load, Site site, Invocation in) {
        List<Pack> before = new ArrayList<>();
        for (ReadFile read : packs) {
            LoadPack.Result result =
                    load.tryOut(read.file(), before, site, in.person().name(), in.now());
            refuse(read, result.list());
            before.add(read.pack());
        }
    }

    private static void refuse(ReadFile read, @Nullable ImportReport list) {
        if (list != null && list.isRefused()) {
            throw RefusedRows.refusal(Told.name(read.pack()), list);
        }
    }

    private static List<ReadFile> read(Invocation in) {
        List<ReadFile> packs = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (PackFiles.PackFile file : PackFiles.of(in.all(PACK))) {
            PackReading reading = LoadPack.read(file.path(), file.name());
            Told.warnings(in, reading);
            Pack pack = reading.pack();
            if (pack != null) {
                packs.add(new ReadFile(file.path(), pack));
            }
            reading.problems().stream().map(PackProblem::asProblem).forEach(problems::add);
        }
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
        packs.sort(OLDEST_FIRST);
        return packs;
    }

    private static void show(Invocation in, Site site, ReadFile read, LoadPack.Result result) {
        String name = Told.name(read.pack());
        ImportReport list = result.list();
        if (list == null) {
            in.print(name + ": known already");
        } else {
            refuse(read, list);
            in.print(name + ": loaded as " + entry(site, list) + vehicles(list));
        }
    }

    private static String entry(Site site, ImportReport list) {
        return "entry " + list.entries().get(0).number() + " of site " + site.site();
    }

    private static String vehicles(ImportReport list) {
        ImportReport.Counts counts = list.counts().get(FactKind.VEHICLES);
        return counts == null
                ? ""
                : ", with "
                        + counts.recorded()
                        + (counts.recorded() == 1 ? " vehicle" : " vehicles")
                        + (counts.known() == 0 ? "" : " and " + counts.known() + " known already");
    }
}
