package counterbench.oracle;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Writes the paper of an invented garage: most jobs in order, every rule broken now and then. */
public final class GarageWriter {

    private static final LocalDate FIRST = LocalDate.of(2026, 2, 2);
    private static final int DAYS = 314;
    private static final List<String> CAMPAIGNS =
            List.of(
                    "HX-26-031",
                    "HX-26-031",
                    "HX-26-031",
                    "HX-26-031",
                    "HX-26-044",
                    "HX-26-044",
                    "HX-26-044",
                    "HX-26-052",
                    "HX-26-060",
                    "HX-26-060");

    private GarageWriter() {}

    /**
     * Writes {@code folder/sheets} and {@code folder/packs}; the same seed writes the same paper.
     */
    public static Garage write(long seed, GarageOptions options, Path folder) {
        OracleSite site = OracleSite.of("NORTH", "America/Chicago", "USD");
        Instant asOf = Instant.parse("2026-12-10T18:00:00Z");
        Path sheets = folder.resolve("sheets");
        List<Path> files = packs(folder.resolve("packs"));
        create(sheets);
        List<Pack> packs = files.stream().map(PackReader::read).toList();
        Dice dice = new Dice(seed);
        try (SheetFiles out =
                new SheetFiles(sheets, options.filesPerKind(), options.shuffled(), seed)) {
            Office office =
                    new Office(dice, out, site, asOf, new Packs(packs), options.contested());
            jobs(office, packs, options);
        }
        return new Garage(sheets, files, site, asOf);
    }

    private static void jobs(Office office, List<Pack> packs, GarageOptions options) {
        KitWriter kits = new KitWriter(office);
        VehicleWriter vehicles = new VehicleWriter(office);
        vehicles.headings(packs.subList(1, packs.size()));
        new SetupWriter(office).write(FIRST);
        StoreWriter store = new StoreWriter(office, kits, options.jobs(), FIRST);
        JobWriter jobs = new JobWriter(office, vehicles, kits, options.faultPercent());
        for (int i = 0; i < options.jobs(); i++) {
            LocalDate day = FIRST.plusDays((long) i * DAYS / options.jobs());
            store.until(day);
            jobs.write(office.dice.pick(CAMPAIGNS), day);
        }
    }

    private static List<Path> packs(Path folder) {
        create(folder);
        List<Path> files = new ArrayList<>();
        files.add(file(folder, "HX-26-031-A", GaragePacks.liftPump("A", "2026-01-05", 3, 10)));
        files.add(file(folder, "HX-26-031-B", GaragePacks.liftPump("B", "2026-06-01", 4, 12)));
        files.add(file(folder, "HX-26-044", GaragePacks.rails()));
        files.add(file(folder, "HX-26-052", GaragePacks.valve()));
        files.add(file(folder, "HX-26-060", GaragePacks.twinValve()));
        return files;
    }

    private static Path file(Path folder, String name, String text) {
        try {
            return Files.writeString(folder.resolve(name + ".yaml"), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void create(Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
