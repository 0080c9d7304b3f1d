package counterbench.stock;

import counterbench.shared.Address;
import counterbench.shared.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Any sequence of acts, sensible or not, on few jobs and kits, so that they meet often. The same
 * seed writes the same paper.
 */
public final class RandomPaper {
    private static final List<String> PARTS =
            List.of("QM-4471", "QM-4472", "QM-4473", "QM-4475", "QM-4476", "QM-9999");

    private final Random random;
    private final int size;
    private int line;
    private final List<ReceivedKit> kits = new ArrayList<>();
    private final List<ReceivedKit> arriving = new ArrayList<>();
    private final List<Receipt> receipts = new ArrayList<>();
    private final List<Issue> issues = new ArrayList<>();
    private final List<Use> uses = new ArrayList<>();
    private final List<StockEvent> events = new ArrayList<>();
    private final List<Count> counts = new ArrayList<>();
    private final List<JobEnd> ends = new ArrayList<>();

    public RandomPaper(long seed) {
        random = new Random(seed);
        size = 2 + random.nextInt(7);
        writeKits();
        for (int row = 0; row < 60; row++) {
            writeRow();
        }
        for (int job = 0; job < size; job += 2) {
            ends.add(new JobEnd(next(), "J-" + job, moment(), Set.of("QM-4475")));
        }
    }

    /** The facts as written. */
    public LedgerFacts facts() {
        return new LedgerFacts(kits, arriving, receipts, issues, uses, events, counts, ends);
    }

    /** The same facts in another order. */
    public LedgerFacts shuffled() {
        return new LedgerFacts(
                mixed(kits),
                mixed(arriving),
                mixed(receipts),
                mixed(issues),
                mixed(uses),
                mixed(events),
                mixed(counts),
                mixed(ends));
    }

    private <T> List<T> mixed(List<T> rows) {
        List<T> mixed = new ArrayList<>(rows);
        Collections.shuffle(mixed, random);
        return mixed;
    }

    private void writeKits() {
        for (int k = 0; k < size; k++) {
            List<PartQuantity> missing =
                    random.nextInt(4) > 0
                            ? List.of()
                            : List.of(new PartQuantity("QM-4473", Quantity.ONE));
            Kit kit =
                    new Kit(
                            next(),
                            "K-" + k,
                            "QM-4470-K",
                            moment(),
                            null,
                            null,
                            null,
                            null,
                            missing);
            boolean known = random.nextInt(8) > 0;
            kits.add(new ReceivedKit(kit, known ? StockPaper.terms() : null));
        }
        Kit foreign =
                new Kit(
                        next(),
                        "K-" + size,
                        "QM-4470-K",
                        moment(),
                        null,
                        null,
                        null,
                        null,
                        List.of());
        arriving.add(new ReceivedKit(foreign, StockPaper.terms()));
    }

    private void writeRow() {
        switch (random.nextInt(12)) {
            case 0 -> receipts.add(receipt());
            case 1, 2 -> issues.add(new Issue(next(), job(), moment(), kit(), null, null, null));
            case 3 -> issues.add(new Issue(next(), job(), moment(), null, part(), amount(), lot()));
            case 4 -> events.add(event(kit(), maybe(part())));
            case 5 -> events.add(event(null, part()));
            case 6 -> counts.add(new Count(next(), moment(), amount(), part(), null));
            case 7 ->
                    counts.add(
                            new Count(
                                    next(), moment(), Quantity.of(random.nextInt(2)), null, kit()));
            default -> uses.add(use());
        }
    }

    private Receipt receipt() {
        return new Receipt(next(), part(), amount(), moment(), lot(), null, null);
    }

    private StockEvent event(@Nullable String kit, @Nullable String part) {
        StockEvent.Kind kind = pick(List.of(StockEvent.Kind.values()));
        Quantity quantity = part == null ? null : amount();
        return new StockEvent(next(), kind, moment(), kit, part, quantity, null, "SOUTH");
    }

    private Use use() {
        Use.Condition condition = pick(List.of(Use.Condition.values()));
        Use.Condition was = random.nextBoolean() ? Use.Condition.NEW : Use.Condition.REUSED;
        return new Use(
                next(),
                job(),
                part(),
                amount(),
                condition,
                moment(),
                maybe(kit()),
                lot(),
                maybe("C-1"),
                condition == Use.Condition.TAKEN_OFF ? was : null,
                null,
                null);
    }

    private Address next() {
        line++;
        return new Address(1 + random.nextInt(3), line);
    }

    /** One of sixty hours around the turn of two months. */
    private Instant moment() {
        return Instant.parse("2026-03-30T12:00:00Z").plus(Duration.ofHours(random.nextInt(60)));
    }

    private String job() {
        return "J-" + random.nextInt(size);
    }

    private String kit() {
        return "K-" + random.nextInt(size + 2);
    }

    private String part() {
        return pick(PARTS);
    }

    private @Nullable String lot() {
        return maybe("7C");
    }

    private Quantity amount() {
        return Quantity.of(1 + random.nextInt(8))
                .minus(Quantity.of(random.nextBoolean() ? "0" : "0.125"));
    }

    private <T> T pick(List<T> some) {
        return some.get(random.nextInt(some.size()));
    }

    private @Nullable String maybe(String text) {
        return random.nextInt(3) == 0 ? text : null;
    }
}
