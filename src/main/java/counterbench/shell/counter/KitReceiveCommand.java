package counterbench.shell.counter;

import counterbench.acts.Act;
import counterbench.acts.ReceiveKits;
import counterbench.acts.Stamp;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import counterbench.stock.PartQuantity;
import java.util.List;
import java.util.function.Supplier;

/** Takes in kits from the supplier. */
public final class KitReceiveCommand extends ActCommand {
    private static final Option<String> PART =
            Option.of(
                    "part", "KITPART", Readings.TEXT, "the kit's part number, if no label says it");
    private static final Option<String> REVISION =
            Option.of(
                    "revision",
                    "REVISION",
                    Readings.TEXT,
                    "the revision that it was packed under; the one in force unless said");
    private static final Option<List<PartQuantity>> MISSING =
            Option.of(
                    "missing",
                    "LIST",
                    MissingReading::read,
                    "what each came without, as \"QM-4473:1; QM-4476:2\"");

    public KitReceiveCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("kit receive", Group.PARTS_COUNTER, "Take in kits from the supplier")
                .takes(
                        CounterOptions.KITS,
                        PART.completedBy(names.kitParts()),
                        REVISION,
                        CounterOptions.EXPIRES,
                        CounterOptions.LOT,
                        CounterOptions.COST,
                        MISSING,
                        CounterOptions.DOCUMENT)
                .example(
                        "kit receive FP-1101 FP-1102 --part HB-3010-K --expires 2026-11-28 --lot"
                                + " FP2604 --cost 348.50 --document DN-0414-N")
                .example("kit receive FP-1103 --part HB-3010-K --missing \"HB-3013:1\"")
                .example("kit receive \"(240)HB-3010-K(17)261128(10)FP2604(21)FP-1104\"")
                .note(
                        "Several serials at once share everything else. A scanned label says part,"
                                + " lot and last usable day, unless the line does.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        KitLabels labels = KitLabels.of(in, site);
        return new ReceiveKits(
                labels.serials(),
                labels.part(in.find(PART)),
                new ReceiveKits.Delivery(
                        in.find(REVISION).orElse(null),
                        labels.expiry(in.find(CounterOptions.EXPIRES)),
                        labels.lot(in.find(CounterOptions.LOT)),
                        in.find(CounterOptions.COST).orElse(null),
                        in.find(MISSING).orElse(List.of()),
                        in.find(CounterOptions.DOCUMENT).orElse(null)),
                stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return Told.kits(recorded) + " received";
    }
}
