package counterbench.job;

import counterbench.campaign.Condition.Holds;
import counterbench.campaign.KitLine;
import counterbench.campaign.Pack;
import counterbench.shared.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What a pack requires of a job on one vehicle, part by part. Several lines for a part add up, also
 * those of several kits, each as often as a job needs its kit; parts linked by {@code replaces} are
 * one part, named as the newest. Depends on pack and attributes alone, so it can be kept for the
 * next job on the like vehicle.
 */
public final class Requirements {
    private final Pack pack;
    private final PartNames names;
    private final Map<String, Requirement> byPart = new LinkedHashMap<>();

    private Requirements(Pack pack, List<PackLine> lines, Map<String, String> attributes) {
        this.pack = pack;
        this.names = new PartNames(lines);
        Map<String, List<PackLine>> linesOf = new LinkedHashMap<>();
        for (PackLine line : lines) {
            String part = names.packPart(line.line().part());
            linesOf.computeIfAbsent(part, p -> new ArrayList<>()).add(line);
        }
        linesOf.forEach((part, of) -> byPart.put(part, requirement(part, of, attributes)));
    }

    /**
     * What the pack requires on a vehicle.
     *
     * @param attributes the vehicle's; none for one that is not listed
     */
    public static Requirements of(Pack pack, Map<String, String> attributes) {
        List<PackLine> lines =
                pack.kits().stream()
                        .flatMap(
                                kit ->
                                        kit.contents().stream()
                                                .map(line -> PackLine.of(kit, line, attributes)))
                        .toList();
        return new Requirements(pack, lines, new TreeMap<>(attributes));
    }

    /** The pack whose terms these are. */
    public Pack pack() {
        return pack;
    }

    /** Every part of the pack's kits, in the order of the pack. */
    public List<Requirement> all() {
        return List.copyOf(byPart.values());
    }

    /** The parts that go on the vehicle, in the order of the pack. */
    public List<Requirement> onVehicle() {
        return byPart.values().stream().filter(Requirement::onVehicle).toList();
    }

    /** What the pack says about a part, by its own number or one that it replaces. */
    public Optional<Requirement> of(String part) {
        return Optional.ofNullable(byPart.get(packPart(part)));
    }

    /** The pack's part that a part number counts as; the number itself if the pack has none. */
    public String packPart(String part) {
        return names.packPart(part);
    }

    private static Requirement requirement(
            String part, List<PackLine> lines, Map<String, String> attributes) {
        PackLine first = named(part, lines);
        return new Requirement(
                part,
                first.line().name(),
                first.line().unit(),
                lines.stream().anyMatch(PackLine::isOnVehicle),
                sum(lines, PackLine::required),
                sum(lines, PackLine::atLeast),
                any(lines, KitLine::singleUse),
                any(lines, KitLine::matched),
                any(lines, KitLine::shelfLife),
                others(part, lines),
                lacking(lines, attributes));
    }

    private static PackLine named(String part, List<PackLine> lines) {
        return lines.stream()
                .filter(line -> line.line().part().equals(part))
                .findFirst()
                .orElse(lines.get(0));
    }

    private static Quantity sum(List<PackLine> lines, Function<PackLine, Quantity> amount) {
        return lines.stream()
                .filter(line -> line.isOnVehicle() && line.holds() == Holds.YES)
                .map(amount)
                .reduce(Quantity.ZERO, Quantity::plus);
    }

    private static boolean any(List<PackLine> lines, Predicate<KitLine> flag) {
        return lines.stream().map(PackLine::line).anyMatch(flag);
    }

    private static List<String> others(String part, List<PackLine> lines) {
        return lines.stream()
                .map(PackLine::line)
                .flatMap(line -> Stream.concat(Stream.of(line.part()), line.replaces().stream()))
                .filter(other -> !other.equals(part))
                .distinct()
                .sorted()
                .toList();
    }

    private static SortedSet<String> lacking(List<PackLine> lines, Map<String, String> attributes) {
        SortedSet<String> lacking = new TreeSet<>();
        lines.stream()
                .filter(line -> line.isOnVehicle() && line.holds() == Holds.UNKNOWN)
                .forEach(line -> lacking.addAll(line.lacking(attributes)));
        return lacking;
    }
}
