package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;

/** Brings kits to the site: new ones, or one that another job put back whole. */
final class KitWriter {

    private final Office office;

    KitWriter(Office office) {
        this.office = office;
    }

    /** A kit for a story, received some days before the job is opened. */
    KitBox kitFor(JobStory story, String kitPart) {
        Deque<Office.Returned> free = office.kitsPutBack.getOrDefault(kitPart, new ArrayDeque<>());
        boolean usable = !free.isEmpty() && free.peekFirst().from().isBefore(story.opened);
        if (usable && story.fault.isEmpty()) {
            return free.removeFirst().kit();
        }
        LocalDate day = office.clock.day(story.opened);
        LocalDate came = day.minusDays(office.dice.between(1, 16));
        Instant received =
                story.is(Fault.ISSUED_ON_RECEIPT)
                        ? Office.plus(story.opened, 5)
                        : office.at(came, office.dice.between(8, 15), office.dice.between(0, 59));
        if (story.is(Fault.KIT_ISSUED_BEFORE_RECEIPT)) {
            received = Office.plus(story.opened, 75);
        }
        if (story.is(Fault.KIT_ARRIVED)) {
            return arrive(kitPart, received);
        }
        return receive(kitPart, received, expiry(story, day), missing(story));
    }

    private static LocalDate expiry(JobStory story, LocalDate day) {
        if (story.is(Fault.KIT_EXPIRED)) {
            return day.minusDays(1);
        }
        return story.is(Fault.KIT_EXPIRES_TODAY) ? day : day.plusDays(240);
    }

    private static Map<String, BigDecimal> missing(JobStory story) {
        if (story.is(Fault.LOT_EXPIRED, Fault.LOT_EXPIRES_TODAY)) {
            Pack.Content sealant = story.sealant().orElseThrow();
            return Map.of(sealant.part(), sealant.quantity().number());
        }
        if (story.is(Fault.MATCHED_LOOSE)) {
            return Map.of(matchedTwo(story), BigDecimal.ONE);
        }
        boolean fewer = story.is(Fault.KIT_WITH_MISSING, Fault.KIT_WITH_SHORT);
        return fewer && story.kits.isEmpty() ? Map.of(story.washer(), BigDecimal.ONE) : Map.of();
    }

    /** The second of the matched parts. */
    static String matchedTwo(JobStory story) {
        return story.items().get(0).contents().stream()
                .filter(Pack.Content::matched)
                .skip(1)
                .findFirst()
                .orElseThrow()
                .part();
    }

    KitBox receive(
            String kitPart, Instant received, LocalDate expires, Map<String, BigDecimal> missing) {
        String serial = office.next("K-");
        LocalDate day = office.clock.day(received);
        String revision = revision(kitPart, day);
        Map<String, BigDecimal> contents =
                new LinkedHashMap<>(office.packs.contents(kitPart, revision, day));
        StringBuilder listed = new StringBuilder();
        missing.forEach(
                (part, q) -> {
                    contents.merge(part, q.negate(), BigDecimal::add);
                    listed.append(listed.isEmpty() ? "" : "; ").append(part).append(':').append(q);
                });
        office.out.row(
                "kits",
                "kit",
                serial,
                "kit_part",
                kitPart,
                "received_at",
                office.time(received),
                "revision",
                revision,
                "expires_on",
                expires.toString(),
                "lot",
                office.dice.percent(30) ? "KL-" + day.getMonthValue() : "",
                "unit_cost",
                "184.50",
                "currency",
                office.site.currency(),
                "missing",
                listed.toString(),
                "document",
                "DN-" + day,
                "by",
                office.clerk());
        return new KitBox(serial, kitPart, contents);
    }

    /**
     * Packed under the revision in force, which may be said, or under the first one as old stock.
     */
    private String revision(String kitPart, LocalDate day) {
        if (office.dice.percent(70)) {
            return "";
        }
        boolean lift = kitPart.equals("HX-3100-K") && office.dice.percent(90);
        return lift ? office.packs.inForce("HX-26-031", day).revision() : "A";
    }

    /** A kit from the other site: each part that it holds is said. */
    private KitBox arrive(String kitPart, Instant at) {
        String serial = office.next("KS-");
        Map<String, BigDecimal> contents = office.packs.contents(kitPart, "", office.clock.day(at));
        contents.forEach(
                (part, q) ->
                        office.out.row(
                                "moves",
                                "event",
                                "arrived",
                                "at",
                                office.time(at),
                                "kit",
                                serial,
                                "part",
                                part,
                                "quantity",
                                BenchWriter.plain(q),
                                "other_site",
                                "SOUTH",
                                "by",
                                office.clerk(),
                                "ref",
                                office.next("M")));
        return new KitBox(serial, kitPart, contents);
    }

    /** A kit that stays on the shelf unless somebody takes from it. */
    KitBox shelfKit(String kitPart, Instant before) {
        LocalDate day = office.clock.day(before).minusDays(2);
        return receive(kitPart, office.at(day, 9, 30), day.plusDays(300), Map.of());
    }
}
