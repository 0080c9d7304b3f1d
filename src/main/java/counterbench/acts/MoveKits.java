package counterbench.acts;

import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import counterbench.stock.StockEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes whole kits off the shelf: to another site, back to the supplier, or into the scrap. */
public record MoveKits(List<String> kits, Leaving leaving, Stamp stamp) implements Act {
    public MoveKits {
        kits = List.copyOf(kits);
    }

    @Override
    public FactKind makes() {
        return FactKind.MOVES;
    }

    @Override
    public Named named() {
        return Named.NOTHING.withKits(kits);
    }

    @Override
    public Decision decide(Situation situation) {
        leaving.mustHaveDestination(situation);
        List<Problem> problems = new ArrayList<>(NamedTwice.problems("kit", kits));
        List<String> remarks = new ArrayList<>();
        for (String serial : kits) {
            KitState kit = situation.kit(serial);
            problem(kit).ifPresent(problems::add);
            if (leaving.kind() == StockEvent.Kind.SENT && kit.isOpened()) {
                remarks.add(opened(kit));
            }
        }
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
        return new Decision(kits.stream().map(this::row).toList(), remarks);
    }

    private FactRow row(String kit) {
        return leaving.row(stamp).with("kit", kit);
    }

    private Optional<Problem> problem(KitState kit) {
        String asked = "kit \"" + kit.serial() + "\" " + leaving.words();
        if (!kit.isOnShelf()) {
            return Optional.of(new Problem(asked, "the kit " + kit.whereabouts(), wayOut(kit)));
        }
        return kit.isFree(stamp.at())
                ? Optional.empty()
                : Optional.of(
                        new Problem(
                                asked,
                                "it was not on the shelf at that time",
                                "say with --at when it left, or leave --at out"));
    }

    private static String wayOut(KitState kit) {
        return kit.place() == KitPlace.ISSUED
                ? "put it back there first (put-back)"
                : "kit show " + kit.serial() + " tells its life; kit list shows the shelf";
    }

    private static String opened(KitState kit) {
        return "kit "
                + kit.serial()
                + " is not whole; the other site's book will take it for whole: tell them what is"
                + " missing, for kit short";
    }
}
