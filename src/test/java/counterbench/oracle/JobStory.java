package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One job while its paper is written. */
final class JobStory {

    /** A core of this job: its tag, serial and terms, and when it could be packed. */
    record Removed(String tag, String serial, Pack.CoreItem item, Instant ready) {}

    final String job;
    final Pack pack;
    final String vin;
    final Map<String, String> real;
    final Instant opened;
    final Optional<Fault> fault;
    final List<KitBox> kits = new ArrayList<>();
    final List<Removed> cores = new ArrayList<>();
    final Map<String, Map<String, BigDecimal>> bench = new LinkedHashMap<>();
    String redoOf = "";
    Instant clock;
    Instant completed;
    Instant coresShipped;
    Instant coresAnswered;
    boolean allCoresMeet = true;
    boolean backIntoKit;

    JobStory(
            String job,
            Pack pack,
            String vin,
            Map<String, String> real,
            Instant opened,
            Optional<Fault> fault) {
        this.job = job;
        this.pack = pack;
        this.vin = vin;
        this.real = real;
        this.opened = opened;
        this.fault = fault;
        this.clock = opened;
        this.completed = opened;
        this.coresShipped = opened;
        this.coresAnswered = opened;
    }

    boolean is(Fault... any) {
        return fault.isPresent() && Arrays.asList(any).contains(fault.get());
    }

    boolean applies(When when) {
        return when.holds(real) == When.Applies.YES;
    }

    /** The next moment of the work, some minutes on. */
    Instant tick(int minutes) {
        clock = Office.plus(clock, minutes);
        return clock;
    }

    /** The kit items that the vehicle really needs. */
    List<Pack.KitItem> items() {
        return pack.kits().stream().filter(k -> applies(k.when())).toList();
    }

    /** How many of each part go on the vehicle. */
    Map<String, BigDecimal> needed() {
        Map<String, BigDecimal> needed = new LinkedHashMap<>();
        for (Pack.KitItem kit : items()) {
            for (Pack.Content line : kit.contents()) {
                if (!line.onCore() && applies(line.when())) {
                    BigDecimal all = line.quantity().number().multiply(kit.quantity());
                    needed.merge(line.part(), all, BigDecimal::add);
                }
            }
        }
        return needed;
    }

    /** The first line that fits, for faults that need a part of some nature. */
    Optional<Pack.Content> line(java.util.function.Predicate<Pack.Content> nature) {
        return items().stream()
                .flatMap(k -> k.contents().stream())
                .filter(c -> applies(c.when()))
                .filter(nature)
                .findFirst();
    }

    /** A counted single-use part of which more than one is needed. */
    String washer() {
        return line(c -> c.singleUse() && c.quantity().number().intValue() > 1)
                .orElseThrow()
                .part();
    }

    Optional<Pack.Content> sealant() {
        return line(c -> c.quantity().measured());
    }

    BigDecimal onBench(String kit, String part) {
        return bench.getOrDefault(kit, Map.of()).getOrDefault(part, BigDecimal.ZERO);
    }

    void putOnBench(String kit, String part, BigDecimal quantity) {
        bench.computeIfAbsent(kit, k -> new LinkedHashMap<>())
                .merge(part, quantity, BigDecimal::add);
    }
}
