package counterbench.oracle;

import static counterbench.oracle.Fault.*;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/** Issues kits to a job and fits the hardware, rightly or as the fault says. */
final class HardwareWriter {

    private static final BigDecimal ONE = BigDecimal.ONE;

    private final Office office;
    private final KitWriter kits;
    private final JobStory story;
    private final BenchWriter bench;

    HardwareWriter(Office office, KitWriter kits, JobStory story) {
        this.office = office;
        this.kits = kits;
        this.story = story;
        this.bench = new BenchWriter(office, story);
    }

    void issueKits() {
        for (Pack.KitItem item : story.items()) {
            for (int i = 0; i < item.quantity().intValue(); i++) {
                KitBox kit =
                        story.is(KIT_UNKNOWN_ISSUED)
                                ? unknownKit(item)
                                : kits.kitFor(story, item.part());
                bench.issueKit(kit, story.tick(5));
            }
        }
        if (story.is(SPLIT, SPLIT_THEN_OFF)) {
            KitBox second = kits.kitFor(story, story.items().get(0).part());
            bench.issueKit(second, story.tick(2));
        }
        if (story.is(KIT_ISSUED_TO_TWO)) {
            office.emptyKits.stream()
                    .filter(k -> k.from().isBefore(story.opened))
                    .map(Office.Returned::kit)
                    .findFirst()
                    .ifPresent(this::issueEmptyKit);
        }
        if (story.is(KIT_WITH_SHORT, FOUND_SHORT)) {
            foundShort(story.kits.get(0), story.washer());
        }
    }

    private void issueEmptyKit(KitBox empty) {
        bench.issueKit(empty, story.tick(2));
        story.bench.remove(empty.serial());
    }

    private KitBox unknownKit(Pack.KitItem item) {
        LocalDate day = office.clock.day(story.opened);
        return new KitBox(
                office.next("K-9"), item.part(), office.packs.contents(item.part(), "", day));
    }

    private void foundShort(KitBox kit, String part) {
        office.out.row(
                "moves",
                "event",
                "short",
                "at",
                office.time(story.tick(3)),
                "kit",
                kit.serial(),
                "part",
                part,
                "quantity",
                "1",
                "reason",
                "not in the box",
                "by",
                office.clerk());
        story.putOnBench(kit.serial(), part, ONE.negate());
    }

    /** Whatever ends without a completed job: the kit goes back, whole or nearly so. */
    void undo() {
        if (story.is(ABANDONED_LEFT)) {
            keepOnBench();
        }
        if (story.is(ABANDONED_CLEAN)) {
            bench.use(
                    story.washer(), ONE, "scrapped", story.kits.get(0).serial(), "reason", "torn");
        }
        bench.clear(true, true);
        if (story.is(NOT_NEEDED)) {
            KitBox kit = story.kits.get(0);
            office.kitsPutBack
                    .computeIfAbsent(kit.kitPart(), k -> new java.util.ArrayDeque<>())
                    .add(new Office.Returned(kit, Office.plus(story.clock, 60)));
        }
    }

    private void keepOnBench() {
        story.putOnBench(story.kits.get(0).serial(), story.washer(), ONE.negate());
    }

    void fit() {
        for (Map.Entry<String, BigDecimal> need : story.needed().entrySet()) {
            fit(need.getKey(), need.getValue());
        }
    }

    private void fit(String part, BigDecimal quantity) {
        boolean washer = part.equals(story.washer());
        if (bench.measured(part)) {
            sealant(part, quantity);
        } else if (story.is(SPLIT, SPLIT_THEN_OFF) && part.equals(KitWriter.matchedTwo(story))) {
            matchedFromSecondKit(part);
        } else if (story.is(REUSED_OLD_NUMBER) && replaced().isPresent() && hasReplaces(part)) {
            bench.use(replaced().get(), ONE, "reused", "");
        } else if (story.is(REPLACED_NUMBER_FITTED) && hasReplaces(part)) {
            bench.fitLoose(replaced().orElseThrow(), ONE);
        } else if (washer && story.fault.isPresent()) {
            new WasherFaults(office, kits, story, bench).fit(part, quantity);
        } else {
            split(part, quantity);
        }
    }

    /** Now and then one row a piece. */
    private void split(String part, BigDecimal quantity) {
        if (quantity.compareTo(ONE) > 0 && office.dice.percent(20)) {
            bench.fit(part, ONE);
            bench.fit(part, quantity.subtract(ONE));
        } else {
            bench.fit(part, quantity);
        }
    }

    private void matchedFromSecondKit(String part) {
        String second = story.kits.get(1).serial();
        bench.use(part, ONE, "new", second);
        if (story.is(SPLIT_THEN_OFF)) {
            bench.use(part, ONE, "taken-off", second, "was", "new");
            bench.use(part, ONE, "new", story.kits.get(0).serial());
        }
    }

    private Optional<String> replaced() {
        return story.line(c -> !c.replaces().isEmpty()).map(c -> c.replaces().get(0));
    }

    private boolean hasReplaces(String part) {
        return story.line(c -> c.part().equals(part) && !c.replaces().isEmpty()).isPresent();
    }

    private void sealant(String part, BigDecimal quantity) {
        if (story.is(LOT_EXPIRED, LOT_EXPIRES_TODAY, LOT_BESIDE_KIT)) {
            looseSealant(part, quantity);
            return;
        }
        BigDecimal atLeast = story.sealant().orElseThrow().atLeast();
        BigDecimal used = atLeast.add(quantity).divide(new BigDecimal("2"));
        if (story.is(SEALANT_SHORT)) {
            used = atLeast.subtract(new BigDecimal("0.001"));
        } else if (story.is(SEALANT_AT_LEAST)) {
            used = atLeast;
        } else if (story.is(SEALANT_OVER)) {
            used = quantity.add(new BigDecimal("0.5"));
        }
        bench.use(part, used, "new", story.kits.get(0).serial());
    }

    private void looseSealant(String part, BigDecimal quantity) {
        LocalDate day = office.clock.day(story.opened);
        LocalDate expires = story.is(LOT_EXPIRED, LOT_BESIDE_KIT) ? day.minusDays(1) : day;
        String lot = office.next("L-");
        BigDecimal tube = new BigDecimal("50");
        Instant at = story.tick(1);
        office.out.row(
                "receipts",
                "part",
                part,
                "quantity",
                "50",
                "received_at",
                office.time(at),
                "lot",
                lot,
                "expires_on",
                expires.toString(),
                "unit_cost",
                "9.40",
                "currency",
                office.site.currency(),
                "document",
                "DN-" + lot,
                "by",
                office.clerk());
        office.shelf.change(at, part, tube);
        bench.issueLoose(part, quantity.add(ONE), lot);
        bench.use(part, quantity, "new", "", "lot", lot);
    }

    /** After the work: what is left goes back or to scrap, unless it is to stay. */
    void finish() {
        boolean stays = story.is(LEFT) || (story.is(REUSED, SHORT) && office.dice.percent(50));
        if (story.is(USED_AFTER_COMPLETION)) {
            String kit = story.kits.get(story.kits.size() - 1).serial();
            story.putOnBench(kit, story.washer(), ONE.negate());
        }
        if (stays) {
            rememberLeft();
        } else {
            bench.clear(office.dice.percent(15), story.is(SPLIT, SPLIT_THEN_OFF));
        }
        if (story.is(FOREIGN_PART)) {
            bench.fitLoose("HX-0099", ONE);
        }
        if (story.is(STORE_EMPTY)) {
            String rag = "HX-008" + office.dice.between(1, 8);
            bench.issueLoose(rag, ONE, "");
            bench.use(rag, ONE, "scrapped", "", "reason", "used up");
        }
    }

    private void rememberLeft() {
        for (KitBox kit : story.kits) {
            String part = story.washer();
            boolean kits = story.kits.size() == 1 && !story.is(LEFT);
            if (kits && story.onBench(kit.serial(), part).signum() > 0) {
                office.leftParts.add(
                        new Office.LeftPart(
                                story.job, kit.serial(), story.pack.campaign(), part, story.clock));
            }
        }
    }
}
