package counterbench.shell.counter;

import counterbench.acts.Act;
import counterbench.acts.CountKit;
import counterbench.acts.CountPart;
import counterbench.acts.Stamp;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Quantity;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import java.util.Optional;
import java.util.function.Supplier;

/** Writes down what was counted, and only then says what the book says. */
public final class CountCommand extends ActCommand {
    private static final String PRESENT = "present";
    private static final String MISSING = "missing";
    private static final Argument<String> PART =
            Argument.of(
                    "PART", Scanned.TEXT, "the loose part; with --kit, present or missing instead");
    private static final Argument<Quantity> QUANTITY = CounterOptions.QUANTITY.asOptional();
    private static final Option<String> KIT =
            Option.of("kit", "KIT", Scanned.TEXT, "a kit instead of a loose part");

    public CountCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("count", Group.PARTS_COUNTER, "Write down what was counted on the shelf")
                .takes(PART.completedBy(names.parts()), QUANTITY, KIT.completedBy(names.kits()))
                .example("count HB-3013 4")
                .example("count --kit FP-1012 present")
                .example("count --kit FP-1012 missing")
                .note(
                        "What the book says is told after the count is recorded, so that nobody"
                                + " counts towards a number.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        Optional<String> kit = in.find(KIT);
        if (kit.isEmpty()) {
            Quantity counted =
                    in.find(QUANTITY)
                            .orElseThrow(
                                    () -> in.wrong("how much was counted? count PART QUANTITY"));
            return new CountPart(Scanned.part(in, site, in.get(PART)), counted, stamp);
        }
        String found = in.get(PART);
        if (in.has(QUANTITY) || !(found.equals(PRESENT) || found.equals(MISSING))) {
            throw in.wrong("a kit is there or not: count --kit KIT present, or missing");
        }
        return new CountKit(Scanned.kit(in, site, kit.get()), found.equals(PRESENT), stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return new CountTold(recorded).words();
    }
}
