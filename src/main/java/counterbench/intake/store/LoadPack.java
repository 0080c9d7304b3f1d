package counterbench.intake.store;

import counterbench.campaign.ListedPart;
import counterbench.campaign.Pack;
import counterbench.campaign.Revisions;
import counterbench.campaign.store.JooqPacks;
import counterbench.campaign.yaml.PackReader;
import counterbench.campaign.yaml.PackReading;
import counterbench.db.Store;
import counterbench.facts.Canonical;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.intake.ImportReport;
import counterbench.journal.store.AllPosted;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.sheets.Sheet;
import counterbench.sheets.SheetFiles;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Loads a pack, and with it the list of vehicles that it names, in one entry. */
public final class LoadPack {
    private static final String ENTRY_KIND = "campaign load";

    private final Store store;
    private final ImportPaper imports;

    public LoadPack(Store store, SheetFiles files) {
        this.store = store;
        this.imports = new ImportPaper(store, files);
    }

    /**
     * What came of loading.
     *
     * @param reading the pack, with what is doubtful about it
     * @param known whether the very same pack was loaded before
     * @param list what became of the list of vehicles; null if nothing was recorded
     */
    public record Result(PackReading reading, boolean known, @Nullable ImportReport list) {
        /** The pack. */
        public Pack pack() {
            return Objects.requireNonNull(reading.pack());
        }
    }

    /**
     * Reads a pack and checks it on its own.
     *
     * @param name how problems call the file
     * @throws Refused if the file cannot be read
     */
    public static PackReading read(Path file, String name) {
        return PackReader.read(text(file), name);
    }

    /**
     * As {@link #read}; the list of vehicles that the pack names must lie beside it, too.
     *
     * @throws Refused if the file cannot be read
     */
    public static PackReading readWithList(Path file, String name) {
        return PackReader.read(
                text(file), name, list -> Files.isReadable(file.resolveSibling(list)));
    }

    /**
     * Loads the pack.
     *
     * @throws Refused if the pack is incoherent or its revision does not fit those loaded
     */
    public Result run(Path file, Site site, String person, Instant now) {
        return run(new ImportPaper.Request(file, site, person, now, false, false), List.of());
    }

    /**
     * Finds out whether the pack could be loaded, and records nothing.
     *
     * @param before packs that are to be loaded before it
     * @throws Refused if the pack is incoherent or its revision does not fit those before it
     */
    public Result tryOut(
            Path file, Collection<Pack> before, Site site, String person, Instant now) {
        return run(new ImportPaper.Request(file, site, person, now, true, false), before);
    }

    private Result run(ImportPaper.Request request, Collection<Pack> before) {
        Path file = request.path();
        PackReading reading = read(file, name(file));
        Pack pack = reading.packOrRefuse();
        List<Pack> loaded = new ArrayList<>(before);
        List<ListedPart> listed = new ArrayList<>();
        store.read(
                sql -> {
                    AllPosted posted = new AllPosted(sql);
                    listed.addAll(StoredParts.listed(sql, posted));
                    return loaded.addAll(JooqPacks.all(sql, posted).all());
                });
        if (Revisions.isKnown(loaded, pack)) {
            return new Result(reading, true, null);
        }
        List<Problem> problems = new ArrayList<>(Revisions.problemsOf(loaded, pack));
        problems.addAll(Revisions.contradictions(listed, pack));
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
        var extra = new ImportPaper.Extra(ENTRY_KIND, List.of(row(pack, file)), List.of(pack));
        return new Result(reading, false, imports.run(request, list(pack, file), extra, n -> {}));
    }

    private static List<Sheet> list(Pack pack, Path file) {
        if (pack.vehiclesFile() == null) {
            return List.of();
        }
        readWithList(file, name(file)).packOrRefuse();
        return List.of(Sheet.csv(file.resolveSibling(pack.vehiclesFile()), FactKind.VEHICLES));
    }

    private static FactRow row(Pack pack, Path file) {
        return new FactRow(
                FactKind.PACKS,
                Arrays.asList(pack.campaign(), pack.revision(), name(file), text(file)),
                null);
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    private static String text(Path file) {
        try {
            return Canonical.normalised(Files.readString(file));
        } catch (CharacterCodingException e) {
            throw new Refused(
                    "pack \"" + file + "\"", "it is not written in UTF-8", "save it as UTF-8");
        } catch (IOException e) {
            throw new Refused(
                    "pack \"" + file + "\"",
                    "the file cannot be read",
                    "check its name and that you may read it");
        }
    }
}
