package counterbench.cores;

import counterbench.cores.Difference.Kind;
import counterbench.shared.NearMatch;
import counterbench.shared.TypedWord;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Sets the return centre's sheet against a shipment. What does not fit is matched with the cores
 * that they did not name: by the same serial, or by one slip of the hand, which is one letter put
 * in, left out, changed, or swapped with its neighbour. Matches are shown, never made.
 */
public final class Differences {
    private Differences() {}

    /** A core of ours that a name of theirs may mean. */
    public record Candidate(String core, String why) {}

    /**
     * All differences of a shipment; none before the return centre says anything of it or its
     * cores.
     *
     * @param elsewhere rows that name its cores under shipments that those were never on
     */
    public static List<Difference> of(ShipmentFacts facts, List<Acknowledgement> elsewhere) {
        List<Difference> found = new ArrayList<>();
        elsewhere.forEach(row -> found.add(elsewhere(row, facts)));
        if (facts.acknowledgements().isEmpty()) {
            return List.copyOf(found);
        }
        List<CoreHistory> unnamed =
                facts.cores().stream()
                        .filter(core -> !isNamed(core, facts))
                        .filter(core -> elsewhere.stream().noneMatch(row -> names(row, core)))
                        .toList();
        for (Acknowledgement row : facts.acknowledgements()) {
            stray(row, facts, found);
            otherSerial(row, facts, found);
        }
        unnamed.forEach(
                core ->
                        found.add(
                                new Difference(
                                        Kind.NOT_ON_THEIRS, null, core.core(), serialOf(core))));
        return found.stream().distinct().toList();
    }

    /**
     * It counts for the core all the same; the row is taken back and said anew of the right one.
     */
    private static Difference elsewhere(Acknowledgement row, ShipmentFacts facts) {
        String reason = row.reason();
        String anew =
                "acknowledge %s %s %s --at \"%s\"%s"
                        .formatted(
                                facts.shipment(),
                                row.event().word(),
                                row.core(),
                                facts.site().wallTime(row.at()),
                                reason == null ? "" : " --reason " + TypedWord.quoted(reason));
        return new Difference(
                Kind.ELSEWHERE,
                "shipment " + row.shipment() + ", which it was never on",
                row.core(),
                "%s on %s, which counts for it; to put it right: reverse %s --reason TEXT, then %s"
                        .formatted(
                                row.event().word(),
                                facts.site().dayOf(row.at()),
                                row.address(),
                                anew));
    }

    private static String serialOf(CoreHistory core) {
        return core.serial() == null ? "" : ", serial " + core.serial();
    }

    private static boolean isNamed(CoreHistory core, ShipmentFacts facts) {
        return core.isAcknowledged()
                || facts.acknowledgements().stream().anyMatch(row -> names(row, core));
    }

    /** The cores of which they do not say elsewhere, by tag or serial, what this row says. */
    private static List<CoreHistory> leftOut(Acknowledgement stray, ShipmentFacts facts) {
        List<Acknowledgement> alike =
                facts.acknowledgements().stream()
                        .filter(row -> row.core() != null || row.serial() != null)
                        .filter(row -> isReceipt(row) == isReceipt(stray))
                        .toList();
        return facts.cores().stream()
                .filter(core -> alike.stream().noneMatch(row -> names(row, core)))
                .toList();
    }

    private static boolean isReceipt(Acknowledgement row) {
        return row.event() == CoreEvent.Kind.RECEIVED;
    }

    private static boolean names(Acknowledgement row, CoreHistory core) {
        if (row.core() != null) {
            return row.core().equals(core.core());
        }
        return row.serial() == null || row.serial().equals(core.serial());
    }

    private static void stray(Acknowledgement row, ShipmentFacts facts, List<Difference> found) {
        if (facts.cores().stream().anyMatch(core -> names(row, core))) {
            return;
        }
        String theirs = theirs(row);
        List<Candidate> candidates = candidates(row.core(), row.serial(), leftOut(row, facts));
        candidates.forEach(
                c -> found.add(new Difference(Kind.NOT_ON_OURS, theirs, c.core(), c.why())));
        if (candidates.isEmpty()) {
            found.add(
                    new Difference(
                            Kind.NOT_ON_OURS,
                            theirs,
                            null,
                            "no core that they left out is like it"));
        }
    }

    private static String theirs(Acknowledgement row) {
        if (row.core() == null) {
            return "serial " + row.serial();
        }
        return "core " + row.core() + (row.serial() == null ? "" : ", serial " + row.serial());
    }

    private static void otherSerial(
            Acknowledgement row, ShipmentFacts facts, List<Difference> found) {
        String theirs = row.serial();
        for (CoreHistory core : facts.cores()) {
            String ours = core.serial();
            if (!core.core().equals(row.core()) || theirs == null || ours == null) {
                continue;
            }
            if (!theirs.equals(ours)) {
                found.add(
                        new Difference(
                                Kind.OTHER_SERIAL, theirs, core.core(), serials(theirs, ours)));
            }
        }
    }

    /** Two serials that are not the same, in words. */
    public static String serials(String theirs, String ours) {
        String how = isSlip(theirs, ours) ? "a slip of the hand apart" : "not alike";
        return theirs + " where ours is " + ours + ", " + how;
    }

    /**
     * The cores that a name may mean, by tag: those of the same serial; where there is none, those
     * whose tag or serial is one slip of the hand away.
     */
    public static List<Candidate> candidates(
            @Nullable String tag, @Nullable String serial, Collection<CoreHistory> among) {
        List<Candidate> same =
                among.stream()
                        .filter(core -> serial != null && serial.equals(core.serial()))
                        .map(core -> new Candidate(core.core(), "same serial"))
                        .toList();
        return same.isEmpty()
                ? among.stream()
                        .flatMap(core -> slip(tag, serial, core).stream())
                        .collect(Collectors.toList())
                : same;
    }

    private static List<Candidate> slip(
            @Nullable String tag, @Nullable String serial, CoreHistory core) {
        if (tag != null && isSlip(tag, core.core())) {
            return List.of(new Candidate(core.core(), "the tag is a slip of the hand away"));
        }
        String ours = core.serial();
        return serial != null && ours != null && isSlip(serial, ours)
                ? List.of(
                        new Candidate(
                                core.core(), "its serial " + ours + " is a slip of the hand away"))
                : List.of();
    }

    private static boolean isSlip(String a, String b) {
        return NearMatch.edits(a.toUpperCase(Locale.ROOT), b.toUpperCase(Locale.ROOT)) <= 1
                && !Objects.equals(a, b);
    }
}
