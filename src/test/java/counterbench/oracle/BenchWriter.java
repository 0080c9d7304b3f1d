package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

/** Writes issues and uses of one job, and keeps what is still on its bench. */
final class BenchWriter {

    private final Office office;
    private final JobStory story;

    BenchWriter(Office office, JobStory story) {
        this.office = office;
        this.story = story;
    }

    void issueKit(KitBox kit, Instant at) {
        office.out.row(
                "issues",
                "job",
                story.job,
                "at",
                office.time(at),
                "kit",
                kit.serial(),
                "by",
                office.clerk(),
                "ref",
                office.ref("I"));
        story.kits.add(kit);
        kit.contents().forEach((part, q) -> story.putOnBench(kit.serial(), part, q));
    }

    /** Issues a loose part; the store is stocked well before unless the story says otherwise. */
    void issueLoose(String part, BigDecimal quantity, String lot) {
        Instant at = story.tick(1);
        office.out.row(
                "issues",
                "job",
                story.job,
                "at",
                office.time(at),
                "part",
                part,
                "quantity",
                plain(quantity),
                "lot",
                lot,
                "by",
                office.clerk(),
                "ref",
                office.ref("I"));
        office.shelf.change(at, part, quantity.negate());
        story.putOnBench("", part, quantity);
    }

    /** Fits as many as needed: from the kits, in their order, then from the store. */
    void fit(String part, BigDecimal quantity) {
        BigDecimal wanted = quantity;
        for (KitBox kit : story.kits) {
            BigDecimal taken = wanted.min(story.onBench(kit.serial(), part).max(BigDecimal.ZERO));
            if (taken.signum() > 0) {
                use(part, taken, "new", kit.serial());
                wanted = wanted.subtract(taken);
            }
        }
        if (wanted.signum() > 0) {
            fitLoose(part, wanted);
        }
    }

    void fitLoose(String part, BigDecimal quantity) {
        issueLoose(part, quantity, "");
        use(part, quantity, "new", "");
    }

    /** A use from a kit of the job, or from loose parts where the kit is empty. */
    void use(String part, BigDecimal quantity, String condition, String kit, String... more) {
        use(part, quantity, condition, kit, naming(part, kit), more);
    }

    /** A use whose row names the kit as said. */
    void use(
            String part,
            BigDecimal quantity,
            String condition,
            String kit,
            String named,
            String[] more) {
        row(part, quantity, condition, named, story.tick(office.dice.between(1, 4)), more);
        boolean leaves = !condition.equals("reused") && !condition.equals("taken-off");
        if (leaves) {
            story.putOnBench(kit, part, quantity.negate());
        }
        if (condition.equals("put-back")) {
            story.backIntoKit |= !named.isEmpty();
            if (named.isEmpty()) {
                office.shelf.change(story.clock, part, quantity);
            }
        }
    }

    void row(
            String part,
            BigDecimal quantity,
            String condition,
            String named,
            Instant at,
            String... more) {
        String[] cells = {
            "job",
            story.job,
            "part",
            part,
            "quantity",
            plain(quantity),
            "condition",
            condition,
            "at",
            office.time(at),
            "kit",
            named,
            "by",
            office.technician(),
            "ref",
            office.ref("U"),
            "site",
            office.dice.percent(2) ? office.site.name() : "",
            "x-note",
            office.dice.percent(3) ? "said \"ok\", twice" : ""
        };
        String[] all = java.util.Arrays.copyOf(cells, cells.length + more.length);
        System.arraycopy(more, 0, all, cells.length, more.length);
        office.out.row("uses", all);
    }

    /** The kit may be left unsaid where it is the job's only one that holds the part. */
    private String naming(String part, String kit) {
        long holding = story.kits.stream().filter(k -> k.holds(part)).count();
        boolean alone = story.is(Fault.KIT_UNKNOWN_ISSUED, Fault.KIT_ARRIVED);
        boolean clear = holding == 1 && !kit.isEmpty() && !alone;
        return clear && office.dice.percent(60) ? "" : kit;
    }

    /** Puts back or scraps what is left, so that the bench is empty in the end. */
    void clear(boolean measuredToo, boolean backIntoKit) {
        Map<String, Map<String, BigDecimal>> left = new LinkedHashMap<>();
        story.bench.forEach((kit, parts) -> left.put(kit, new LinkedHashMap<>(parts)));
        left.forEach(
                (kit, parts) ->
                        parts.forEach(
                                (part, q) -> {
                                    if (q.signum() > 0 && (measuredToo || !measured(part))) {
                                        clear(part, q, kit, backIntoKit);
                                    }
                                }));
    }

    private void clear(String part, BigDecimal quantity, String kit, boolean backIntoKit) {
        String named = backIntoKit || office.dice.percent(40) ? kit : "";
        if (!backIntoKit && (measured(part) || office.dice.percent(35))) {
            use(part, quantity, "scrapped", kit, "reason", "spare");
        } else {
            use(part, quantity, "put-back", kit, named, new String[0]);
        }
    }

    boolean measured(String part) {
        return office.packs.measured(part);
    }

    static String plain(BigDecimal quantity) {
        return quantity.stripTrailingZeros().toPlainString();
    }
}
