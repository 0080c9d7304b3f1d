package counterbench.acts.rack;

import counterbench.acts.Act;
import counterbench.acts.CoreCase;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.cores.CoreEvent;
import counterbench.cores.Placement;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Refused;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts cores onto a shipment that has not left. What stands against a core is said, and shipping is
 * the gate.
 */
public record AddToShipment(String shipment, List<String> tags, Stamp stamp) implements Act {
    public AddToShipment {
        tags = tags.stream().distinct().toList();
    }

    @Override
    public FactKind makes() {
        return FactKind.CORES;
    }

    @Override
    public Named named() {
        return Named.NOTHING.withShipment(shipment).withCores(tags);
    }

    @Override
    public Decision decide(Situation situation) {
        OnShipment.refuseAfterLeaving(situation.shipment(shipment), situation.site());
        List<String> there = tags.stream().filter(tag -> isOnIt(tag, situation)).toList();
        List<String> added = tags.stream().filter(tag -> !there.contains(tag)).toList();
        if (added.isEmpty()) {
            throw new Refused(
                    "shipment add " + shipment,
                    words(there) + " on it already",
                    "nothing is left to do");
        }
        List<FactRow> rows =
                OnShipment.rows(
                        shipment,
                        added,
                        CoreEvent.Kind.ADDED,
                        stamp,
                        situation,
                        this::refuseWhereItIs);
        OneYard.mustHold(shipment, together(situation), situation.site(), stamp.at());
        List<String> remarks = new ArrayList<>();
        if (!there.isEmpty()) {
            remarks.add(words(there) + " on it already");
        }
        remarks.addAll(remarks(situation, added));
        return new Decision(rows, remarks);
    }

    private boolean isOnIt(String tag, Situation situation) {
        return situation
                .core(tag)
                .core()
                .placement()
                .filter(on -> on.shipment().equals(shipment))
                .isPresent();
    }

    private static String words(List<String> tags) {
        return (tags.size() == 1 ? "core " : "cores ")
                + String.join(", ", tags)
                + (tags.size() == 1 ? " is" : " are");
    }

    /** Those on it already and those that are added. */
    private List<CoreCase> together(Situation situation) {
        List<CoreCase> together = new ArrayList<>(situation.shipment(shipment).cores());
        tags.stream()
                .filter(tag -> !isOnIt(tag, situation))
                .forEach(tag -> together.add(situation.core(tag)));
        return together;
    }

    private void refuseWhereItIs(Handled core) {
        boolean left = core.history().firstShipped().isPresent();
        core.history()
                .placement()
                .map(Placement::shipment)
                .filter(on -> !left)
                .ifPresent(
                        on -> {
                            throw new Refused(
                                    core.asked() + " onto shipment " + shipment,
                                    "it is on " + on,
                                    "take it off there first: shipment take-off "
                                            + on
                                            + " "
                                            + core.tag());
                        });
    }

    private List<String> remarks(Situation situation, List<String> added) {
        List<String> remarks = new ArrayList<>();
        for (String tag : added) {
            Handled core = Handled.of(tag, situation, stamp);
            if (core.history().lastPacked().isEmpty()) {
                remarks.add(
                        "core " + tag + " is not packed yet: pack " + tag + " --packaging TEXT");
            }
        }
        ShipGate.objections(situation, shipment, added, stamp)
                .forEach(objection -> remarks.add("may not be shipped: " + objection.words()));
        return remarks;
    }
}
