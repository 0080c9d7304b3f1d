package counterbench.shell.demo;

import counterbench.db.Migrations;
import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.people.store.PinHash;
import counterbench.shared.Site;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;

/** Fills a home of its own with the invented garage and runs the whole job on it once. */
public final class DemoCommand extends BaseCommand {
    private static final List<String> AT_THE_RACK =
            List.of(
                    "sign-in Maren --site NORTH",
                    "rack",
                    "shipment open SH-N14 --carrier \"Two Rivers Freight\" --tracking N500114203",
                    "shipment add SH-N14 NC-0072 NC-0074",
                    "ship SH-N14",
                    "ship SH-N14 --override \"the caps are in the same box\"",
                    "shipment show SH-N07",
                    "shipment show SH-S04 --site SOUTH");
    private static final Option<Path> HOME =
            Option.of(
                    "home",
                    "FOLDER",
                    Readings.PATH,
                    "a folder for the demo alone; beside the home folder unless said");

    private static final String STORE_VARIABLE = "COUNTERBENCH_STORE";

    public DemoCommand() {
        super(
                Manual.of("demo", Group.EVERYBODY, "Run the whole job on an invented garage")
                        .takes(HOME)
                        .example("demo")
                        .note(
                                "The demo has a home folder of its own, which it empties and fills"
                                        + " each time. It never touches other folders.")
                        .note("All places, people, parts and values in it are invented."));
    }

    @Override
    protected Status run(Invocation in) throws IOException {
        Path home = in.home().location();
        Path named = in.find(HOME).orElse(DemoHome.beside(home));
        boolean anew = Files.exists(named.resolve(DemoHome.MARKER));
        Path folder = DemoHome.emptied(named, home);
        if (anew) {
            in.tell("the demo in " + folder + " is made anew; what was done in it is gone");
        }
        Path paper = folder.resolve("paper");
        DemoPaper.copy(paper);
        show(in, folder, paper);
        tryNext(in, folder);
        return Status.DONE;
    }

    private static void show(Invocation in, Path folder, Path paper) throws IOException {
        StoreAddress address = StoreAddress.of(folder, null);
        try (Aside early = new Aside()) {
            Supplier<PinHash> pin = DemoGarage.pin(early);
            DemoBooks.practise(early, folder);
            // What goes on beside uses the store, which so is closed after it.
            try (Store store = Store.open(address, new Migrations((opened, from) -> {}));
                    Aside beside = new Aside()) {
                List<Site> yards =
                        new DemoGarage(store, paper, in.now(), in.progress(), pin, beside).fill();
                DemoBooks books = new DemoBooks(store, yards, folder.resolve("workbooks"), beside);
                in.print("the invented garage of Larkmere lies in " + folder);
                in.print("its paper lies in " + paper + ", and README.md there tells its story");
                DemoTour tour = new DemoTour(in, store);
                tour.findings(yards);
                tour.consumption(yards.get(0));
                tour.rack(yards.get(0));
                tour.workbooks(books);
            }
        }
    }

    private static void tryNext(Invocation in, Path folder) {
        boolean server = in.surroundings().variable(STORE_VARIABLE).isPresent();
        TryNext next = new TryNext(folder, server);
        String asOf = " --as-of " + DemoTour.AS_OF;
        String month = " --campaign " + DemoTour.CAMPAIGN + " --month " + DemoTour.RECONCILED;
        in.print("");
        in.print("try next");
        in.print("  " + next.line("review --job N-107" + asOf));
        in.print("  " + next.line("reconcile --site NORTH" + month + asOf));
        in.print("  " + next.line(""));
        in.print(
                "the last one opens the shell: there type sign-in Maren (the lead; or Hal, Otis,"
                        + " Quinn), with the PIN "
                        + DemoGarage.PIN.typed()
                        + ", and help");
        atTheRack(in);
    }

    private static void atTheRack(Invocation in) {
        in.print("");
        in.print("at the rack, in the shell");
        AT_THE_RACK.forEach(line -> in.print("  " + line));
        in.print(
                "ship is refused while NC-0074 has no plugs, and goes with the lead's reason; of"
                        + " SH-N07 the return centre's sheet differs from ours; SH-S04 left by the"
                        + " lead's word, too");
    }
}
