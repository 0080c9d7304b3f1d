package counterbench.oracle;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What all writers of the garage's paper share: dice, sheets, clock, numbers and short memories.
 */
final class Office {

    private static final DateTimeFormatter WITH_T =
            DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm");
    private static final DateTimeFormatter WITH_SPACE =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

    static final List<String> PARTS = List.of("Ines Parr", "Tobias Reck");
    static final List<String> TECHNICIANS = List.of("Ola Birk", "Mara Quill", "Sem Dorran");
    static final String WARRANTY = "Vera Lunt";

    /** A completed visit that another one may repeat. */
    record Visit(String job, String vin, Map<String, String> attributes, LocalDate day) {}

    /** A whole kit put back, free from an instant on. */
    record Returned(KitBox kit, Instant from) {}

    /** A part of a kit left on the bench of a job. */
    record LeftPart(String job, String kit, String campaign, String part, Instant since) {}

    final Dice dice;
    final SheetFiles out;
    final OracleSite site;
    final SiteClock clock;
    final Instant asOf;
    final Packs packs;
    final boolean contested;
    final StoreShelf shelf = new StoreShelf();
    final Map<String, Visit> lastVisit = new LinkedHashMap<>();
    final Map<String, Deque<Returned>> kitsPutBack = new LinkedHashMap<>();
    final List<LeftPart> leftParts = new ArrayList<>();
    final Deque<KitBox> shelfKits = new ArrayDeque<>();
    final Deque<String> emptiedKits = new ArrayDeque<>();
    final Deque<Returned> emptyKits = new ArrayDeque<>();
    String lastSerial = "";
    String acknowledgedElsewhere = "";
    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    Office(
            Dice dice,
            SheetFiles out,
            OracleSite site,
            Instant asOf,
            Packs packs,
            boolean contested) {
        this.dice = dice;
        this.out = out;
        this.site = site;
        this.clock = site.clock();
        this.asOf = asOf;
        this.packs = packs;
        this.contested = contested;
    }

    String next(String prefix) {
        return prefix + "%06d".formatted(numbers.merge(prefix, 1, Integer::sum));
    }

    /** A reference on some rows only. */
    String ref(String prefix) {
        return dice.percent(25) ? next(prefix) : "";
    }

    String clerk() {
        return dice.percent(60) ? dice.pick(PARTS) : "";
    }

    String technician() {
        return dice.percent(70) ? dice.pick(TECHNICIANS) : "";
    }

    Instant at(LocalDate day, int hour, int minute) {
        return day.atTime(hour, minute).atZone(site.zone()).toInstant();
    }

    static Instant plus(Instant at, long minutes) {
        return at.plus(Duration.ofMinutes(minutes));
    }

    /** With the site's offset, in UTC, or local where that is clear. */
    String time(Instant at) {
        ZonedDateTime there = at.atZone(site.zone());
        LocalDateTime local = there.toLocalDateTime();
        boolean clear =
                site.zone().getRules().getValidOffsets(local).size() == 1 && local.getSecond() == 0;
        int form = dice.between(0, 9);
        if (clear && form < 5) {
            return (form == 0 ? WITH_T : WITH_SPACE).format(local);
        }
        return form == 9
                ? DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at.atOffset(ZoneOffset.UTC))
                : DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(there);
    }
}
