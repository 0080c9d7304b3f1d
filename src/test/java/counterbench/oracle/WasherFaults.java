package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;

/** The faults that concern a counted single-use part of which a job needs more than one. */
final class WasherFaults {

    private static final BigDecimal ONE = BigDecimal.ONE;

    private final Office office;
    private final KitWriter kits;
    private final JobStory story;
    private final BenchWriter bench;

    WasherFaults(Office office, KitWriter kits, JobStory story, BenchWriter bench) {
        this.office = office;
        this.kits = kits;
        this.story = story;
        this.bench = bench;
    }

    void fit(String part, BigDecimal quantity) {
        BigDecimal fewer = quantity.subtract(ONE);
        switch (story.fault.orElseThrow()) {
            case REUSED -> {
                bench.fit(part, fewer);
                bench.use(part, ONE, "reused", "", "reason", "none at hand");
            }
            case REUSED_THEN_OFF -> {
                bench.use(part, ONE, "reused", "");
                bench.use(part, ONE, "taken-off", "", "", new String[] {"was", "reused"});
                bench.fit(part, quantity);
            }
            case SHORT -> bench.fit(part, fewer);
            case LEFT -> {
                bench.fit(part, fewer);
                bench.fitLoose(part, ONE);
            }
            case OVER -> {
                bench.fit(part, quantity);
                bench.fitLoose(part, ONE);
            }
            case TAKEN_OFF_NEW -> {
                bench.fit(part, quantity);
                String kit = story.kits.get(0).serial();
                bench.use(part, ONE, "taken-off", kit, "was", "new", "reason", "leaked");
                bench.fitLoose(part, ONE);
            }
            case KIT_UNKNOWN_USED -> oneFromElsewhere(part, fewer, office.next("K-9"), "new");
            case KIT_FROM_SHELF -> oneFromElsewhere(part, fewer, shelfKit(), "new");
            case KIT_FROM_BENCH -> oneFromElsewhere(part, fewer, otherBench(part), "new");
            case KIT_OF_OTHER_REUSED -> oneFromElsewhere(part, fewer, shelfKit(), "reused");
            case EQUAL_ROWS -> equalRows(part, quantity);
            case USED_AFTER_COMPLETION -> bench.fit(part, fewer);
            default -> bench.fit(part, quantity);
        }
    }

    /** The last one, fitted when the job had long been completed. */
    void fitAfterCompletion() {
        String part = story.washer();
        String kit = story.kits.get(story.kits.size() - 1).serial();
        bench.row(part, ONE, "new", kit, Office.plus(story.completed, 45));
    }

    private void oneFromElsewhere(String part, BigDecimal own, String kit, String condition) {
        bench.fit(part, own);
        bench.row(part, ONE, condition, kit, story.tick(3));
    }

    private String shelfKit() {
        KitBox kit = kits.shelfKit(story.kits.get(0).kitPart(), story.opened);
        return kit.serial();
    }

    /** The kit of an earlier job that left this part on its bench, if there is one. */
    private String otherBench(String part) {
        Optional<Office.LeftPart> left =
                office.leftParts.stream()
                        .filter(l -> l.part().equals(part) && l.since().isBefore(story.opened))
                        .filter(l -> l.campaign().equals(story.pack.campaign()))
                        .findFirst();
        left.ifPresent(office.leftParts::remove);
        return left.map(Office.LeftPart::kit).orElseGet(this::shelfKit);
    }

    private void equalRows(String part, BigDecimal quantity) {
        KitBox kit = story.kits.get(0);
        Instant at = story.tick(2);
        String[] row = {
            "job",
            story.job,
            "part",
            part,
            "quantity",
            "1",
            "condition",
            "new",
            "at",
            office.time(at),
            "kit",
            kit.serial()
        };
        office.out.row("uses", row);
        office.out.row("uses", row);
        story.putOnBench(kit.serial(), part, new BigDecimal("-2"));
        if (quantity.compareTo(new BigDecimal("2")) > 0) {
            bench.fit(part, quantity.subtract(new BigDecimal("2")));
        }
    }
}
