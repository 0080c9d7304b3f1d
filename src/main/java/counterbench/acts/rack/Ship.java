package counterbench.acts.rack;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.ShipmentState;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.cores.CoreEvent;
import counterbench.facts.ColumnType;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import counterbench.shared.units.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Sends a shipment off. It is a gate: while an open finding of severity stop stands against a core
 * on it, or it weighs more than the site lets it, only the lead may, with a reason that is
 * recorded.
 *
 * @param weight what it weighs as a whole, if it was weighed just now
 * @param override the lead's reason to let it go all the same
 */
public record Ship(String shipment, @Nullable Weight weight, @Nullable String override, Stamp stamp)
        implements Act {
    /** What the journal calls this gate. */
    public static final String GATE = "ship";

    @Override
    public FactKind makes() {
        return override == null ? FactKind.SHIPMENTS : FactKind.OVERRIDES;
    }

    @Override
    public Named named() {
        return Named.NOTHING.withShipment(shipment);
    }

    @Override
    public Decision decide(Situation situation) {
        ShipmentState leaving = situation.shipment(shipment);
        OnShipment.refuseAfterLeaving(leaving, situation.site());
        if (leaving.cores().isEmpty()) {
            throw new Refused(
                    asked(), "no core is on it", "put some onto it: shipment add " + shipment);
        }
        List<String> tags = leaving.cores().stream().map(core -> core.core().core()).toList();
        List<FactRow> rows = new ArrayList<>();
        if (weight != null) {
            weighed(leaving, weight).ifPresent(rows::add);
        }
        for (String tag : tags) {
            Handled core = Handled.of(tag, situation, stamp);
            core.refuseBeforeLastAct("shipped");
            rows.add(core.row(CoreEvent.Kind.SHIPPED).with("shipment", shipment));
        }
        OneYard.mustHold(shipment, leaving.cores(), situation.site(), stamp.at());
        passGate(situation, leaving, tags).ifPresent(rows::add);
        return new Decision(rows, remarks(leaving));
    }

    private String asked() {
        return "shipment \"" + shipment + "\"";
    }

    /** A row that adds the weight to the shipment, unless it was said before. */
    private Optional<FactRow> weighed(ShipmentState leaving, Weight now) {
        Optional<Weight> before = leaving.shipment().whole();
        before.filter(said -> said.exceeds(now) || now.exceeds(said))
                .ifPresent(
                        said -> {
                            throw new Refused(
                                    asked() + ", weight " + now,
                                    "it was said to weigh " + said,
                                    "reverse that entry if it is wrong (journal show)");
                        });
        return before.isPresent()
                ? Optional.empty()
                : Optional.of(leaving.shipment().weighing(now).row());
    }

    private Optional<FactRow> passGate(
            Situation situation, ShipmentState leaving, List<String> tags) {
        List<Problem> against = new ArrayList<>();
        ShipGate.objections(situation, shipment, tags, stamp)
                .forEach(
                        o ->
                                against.add(
                                        new Problem(
                                                "core \"" + o.core().core().core() + "\"",
                                                o.finding().rule().word()
                                                        + ", "
                                                        + o.finding()
                                                                .message()
                                                                .replaceFirst("^core [^:]*: ", ""),
                                                o.remedy())));
        tooHeavy(situation, leaving).ifPresent(against::add);
        if (override == null) {
            refuse(against);
            return Optional.empty();
        }
        if (against.isEmpty()) {
            throw new Refused(
                    asked(), "nothing stands against it", "leave --override out and ship it");
        }
        return Optional.of(overridden(against));
    }

    private Optional<Problem> tooHeavy(Situation situation, ShipmentState leaving) {
        @Nullable Weight limit = situation.site().shipmentLimit();
        Optional<Weight> weighs = Optional.ofNullable(weight).or(leaving::weight);
        return weighs.filter(sum -> limit != null && sum.exceeds(limit))
                .map(
                        sum ->
                                new Problem(
                                        asked(),
                                        "it weighs " + sum + ", and the site lets " + limit + " go",
                                        "take a core off it: shipment take-off " + shipment));
    }

    private void refuse(List<Problem> against) {
        if (!against.isEmpty()) {
            Problem wayOut =
                    new Problem(
                            asked(),
                            "it stays here while that stands against it",
                            "put it right, or take those cores off (shipment take-off); the lead may"
                                    + " let it go with --override REASON");
            throw new Refused(Stream.concat(against.stream(), Stream.of(wayOut)).toList());
        }
    }

    private FactRow overridden(List<Problem> against) {
        String findings =
                against.stream()
                        .map(p -> p.asked().replace("\"", "") + ": " + p.because())
                        .collect(Collectors.joining("; "));
        int most = ColumnType.NOTE.maxLength();
        return FactRow.of(FactKind.OVERRIDES)
                .with("gate", GATE)
                .with("subject", shipment)
                .with("at", stamp.at())
                .with("reason", override)
                .with(
                        "findings",
                        findings.length() > most ? findings.substring(0, most) : findings);
    }

    private List<String> remarks(ShipmentState leaving) {
        boolean light = weight == null && leaving.notWeighed() > 0;
        List<String> remarks = new ArrayList<>();
        if (light) {
            remarks.add(
                    leaving.notWeighed()
                            + " of its cores were not weighed; say the whole weight with --weight"
                            + " next time");
        }
        leaving.cores().stream()
                .filter(core -> core.terms().isEmpty())
                .map(
                        core ->
                                "core "
                                        + core.core().core()
                                        + ": no terms hold for it as far as can be told, so its"
                                        + " draining and plugs were not judged; make sure of"
                                        + " them")
                .forEach(remarks::add);
        remarks.add(
                "Rules for fuel-wetted parts are the shipper's to check; a logged drain is no"
                        + " permission.");
        return remarks;
    }
}
