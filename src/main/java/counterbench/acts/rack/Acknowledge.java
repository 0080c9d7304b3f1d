package counterbench.acts.rack;

import counterbench.acts.Act;
import counterbench.acts.CoreCase;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.ShipmentState;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.cores.Acknowledgement;
import counterbench.cores.CoreEvent;
import counterbench.cores.CoreHistory;
import counterbench.cores.Differences;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Writes down what the return centre says of a shipment. What it names and is not on the shipment
 * is refused with what it may be, so that nothing is guessed, unless it is to stand as it is
 * written.
 *
 * @param event received, accepted or rejected
 * @param cores tags as they are named; with no serials either, every core of which they have not
 *     said so yet
 * @param serials serials as they are named; one core and one serial together are one unit
 * @param reason why it is rejected
 * @param asWritten whether names that do not fit are recorded as they are written
 */
public record Acknowledge(
        String shipment,
        CoreEvent.Kind event,
        List<String> cores,
        List<String> serials,
        @Nullable String reason,
        boolean asWritten,
        Stamp stamp)
        implements Act {
    public Acknowledge {
        cores = cores.stream().distinct().toList();
        serials = serials.stream().distinct().toList();
        if (!event.acknowledges()) {
            throw new IllegalArgumentException(event.word() + " is no acknowledgement");
        }
    }

    @Override
    public FactKind makes() {
        return FactKind.ACKNOWLEDGEMENTS;
    }

    @Override
    public Named named() {
        return Named.NOTHING.withShipment(shipment);
    }

    @Override
    public Decision decide(Situation situation) {
        ShipmentState sent = situation.shipment(shipment);
        refuseBeforeLeaving(sent, situation.site());
        refuseWithoutReason();
        if (cores.isEmpty() && serials.isEmpty()) {
            return new Decision(ofAll(sent), List.of());
        }
        List<FactRow> rows = new ArrayList<>();
        if (cores.size() == 1 && serials.size() == 1) {
            rows.add(ofUnit(sent, cores.get(0), serials.get(0)));
        } else {
            cores.forEach(tag -> rows.add(ofUnit(sent, tag, null)));
            serials.forEach(serial -> rows.add(ofUnit(sent, null, serial)));
        }
        List<Acknowledgement> said = situation.directory().acknowledgements(shipment);
        rows.forEach(row -> refuseSaidAlready(row, said, situation.site()));
        return new Decision(rows, List.of());
    }

    /** What they said last of a name is not recorded once more. */
    private void refuseSaidAlready(FactRow row, List<Acknowledgement> said, Site site) {
        String tag = row.text("core");
        String serial = row.text("serial");
        said.stream()
                .filter(other -> Objects.equals(other.core(), tag))
                .filter(other -> Objects.equals(other.serial(), serial))
                .max(
                        Comparator.comparing(Acknowledgement::at)
                                .thenComparing(Acknowledgement::address))
                .filter(last -> last.event() == event)
                .filter(last -> Objects.equals(last.reason(), reason))
                .ifPresent(
                        last -> {
                            throw new Refused(
                                    unit(tag, serial) + " of shipment " + shipment,
                                    "that they "
                                            + event.word()
                                            + " it is recorded already, as said at "
                                            + site.wallTime(last.at())
                                            + " (fact "
                                            + last.address()
                                            + ")",
                                    "nothing is left to do; if it is wrong, reverse "
                                            + last.address()
                                            + " --reason TEXT");
                        });
    }

    private static String unit(@Nullable String tag, @Nullable String serial) {
        return Stream.of(
                        tag == null ? "" : "core \"" + tag + "\"",
                        serial == null ? "" : "serial \"" + serial + "\"")
                .filter(name -> !name.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private String asked() {
        return "shipment \"" + shipment + "\"";
    }

    private void refuseBeforeLeaving(ShipmentState sent, Site site) {
        Optional<Instant> left = sent.shippedAt();
        if (left.isEmpty()) {
            throw new Refused(asked(), "it has not left", "send it first: ship " + shipment);
        }
        if (stamp.at().isBefore(left.get())) {
            throw new Refused(
                    asked(),
                    "it left later, at " + site.wallTime(left.get()),
                    "say with --at when they answered");
        }
    }

    private void refuseWithoutReason() {
        if (event == CoreEvent.Kind.REJECTED && reason == null) {
            throw new Refused(
                    asked(), "a rejection needs its reason", "add --reason with their words");
        }
        if (event == CoreEvent.Kind.REJECTED && cores.isEmpty() && serials.isEmpty()) {
            throw new Refused(asked(), "which of its cores were rejected is not said", "name them");
        }
    }

    private List<FactRow> ofAll(ShipmentState sent) {
        List<FactRow> rows =
                sent.cores().stream()
                        .map(CoreCase::core)
                        .filter(core -> !saysSo(core))
                        .map(core -> row(core.core(), null))
                        .toList();
        if (rows.isEmpty()) {
            throw new Refused(
                    asked(),
                    "each of its cores is " + event.word() + " already, or decided on",
                    "nothing is left to do; name a core to say something else of it");
        }
        return rows;
    }

    /** A verdict stands until a core is named; that it was received is said once. */
    private boolean saysSo(CoreHistory core) {
        return event == CoreEvent.Kind.RECEIVED
                ? core.isAcknowledged()
                : core.verdict().isPresent();
    }

    private FactRow ofUnit(ShipmentState sent, @Nullable String tag, @Nullable String serial) {
        Optional<CoreHistory> core =
                sent.cores().stream()
                        .map(CoreCase::core)
                        .filter(c -> tag == null || tag.equals(c.core()))
                        .filter(c -> tag != null || String.valueOf(serial).equals(c.serial()))
                        .findFirst();
        if (!asWritten) {
            core.ifPresentOrElse(
                    c -> refuseOtherSerial(c, serial), () -> refuse(sent, tag, serial));
        }
        return row(tag, serial);
    }

    private void refuseOtherSerial(CoreHistory core, @Nullable String serial) {
        String ours = core.serial();
        if (serial != null && ours != null && !serial.equals(ours)) {
            throw new Refused(
                    "core \"" + core.core() + "\", serial \"" + serial + "\"",
                    Differences.serials(serial, ours),
                    "leave --serial out if it is that core, or add --as-written to keep what they"
                            + " wrote; it will be a finding");
        }
    }

    private void refuse(ShipmentState sent, @Nullable String tag, @Nullable String serial) {
        List<CoreHistory> open =
                sent.cores().stream()
                        .map(CoreCase::core)
                        .filter(core -> !core.isAcknowledged() || !saysSo(core))
                        .toList();
        String near =
                Differences.candidates(tag, serial, open).stream()
                        .map(c -> "core " + c.core() + "? (" + c.why() + ")")
                        .collect(Collectors.joining(" or "));
        throw new Refused(
                tag == null ? "serial \"" + serial + "\"" : "core \"" + tag + "\"",
                "it is not on shipment " + shipment,
                (near.isEmpty() ? "" : "do they mean " + near + "; name that one, or ")
                        + "add --as-written to keep what they wrote; it will be a finding");
    }

    private FactRow row(@Nullable String tag, @Nullable String serial) {
        return stamp.row(FactKind.ACKNOWLEDGEMENTS)
                .with("shipment", shipment)
                .with("event", event.word())
                .with("core", tag)
                .with("serial", serial)
                .with("reason", reason);
    }
}
