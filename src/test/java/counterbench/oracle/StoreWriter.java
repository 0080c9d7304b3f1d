package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * What happens in the store day by day: receipts on the first, moves on the 15th, counts at the
 * end.
 */
final class StoreWriter {

    private static final List<String> LOOSE =
            List.of(
                    "HX-0099", "HX-3092", "HX-3102", "HX-3103", "HX-3104", "HX-3106", "HX-4402",
                    "HX-4403", "HX-4406", "HV-3302", "HV-3303", "HV-3390");
    private static final List<String> KIT_PARTS =
            List.of("HX-3100-K", "HX-4410-K6", "HX-4410-K8", "HV-3300-K");

    private final Office office;
    private final KitWriter kits;
    private final int jobs;
    private LocalDate next;

    StoreWriter(Office office, KitWriter kits, int jobs, LocalDate first) {
        this.office = office;
        this.kits = kits;
        this.jobs = jobs;
        this.next = first;
    }

    /** Writes all that the store did before a day, and on its morning. */
    void until(LocalDate day) {
        while (!next.isAfter(day)) {
            LocalDate yesterday = next.minusDays(1);
            if (yesterday.getMonth() != next.getMonth()) {
                count(yesterday);
            }
            if (next.getDayOfMonth() <= 2) {
                stock(next);
            }
            if (next.getDayOfMonth() == 15) {
                moves(next);
            }
            next = next.plusDays(1);
        }
    }

    private void stock(LocalDate day) {
        Instant at = office.at(day, 6, 30);
        for (String part : LOOSE) {
            BigDecimal quantity = new BigDecimal(60 + jobs / 4);
            office.out.row(
                    "receipts",
                    "part",
                    part,
                    "quantity",
                    quantity.toPlainString(),
                    "received_at",
                    office.time(at),
                    "unit_cost",
                    "0.85",
                    "currency",
                    office.site.currency(),
                    "document",
                    "DN-" + day,
                    "by",
                    office.clerk(),
                    "ref",
                    office.next("G"));
            office.shelf.change(at, part, quantity);
        }
        for (String kitPart : KIT_PARTS) {
            for (int i = 0; i < 4; i++) {
                office.shelfKits.add(kits.shelfKit(kitPart, at));
            }
        }
    }

    private void moves(LocalDate day) {
        whole("returned", day, 0);
        whole("scrapped", day, 5);
        whole("sent", day, 10);
        loose("returned", day, "HX-3103", 2);
        loose("scrapped", day, "HX-4403", 1);
        loose("sent", day, "HV-3303", 6);
        loose("arrived", day, "HX-3106", 5);
        if (office.dice.percent(50)) {
            move(day, 31, "event", "returned", "kit", office.next("K-9"), "reason", "recalled");
        }
        if (office.dice.percent(50)) {
            KitBox kit = office.shelfKits.removeFirst();
            String part = kit.contents().keySet().iterator().next();
            move(day, 40, "event", "scrapped", "kit", kit.serial(), "part", part, "quantity", "1");
            move(day, 45, "event", "scrapped", "kit", kit.serial(), "part", part, "quantity", "1");
        }
    }

    private void whole(String event, LocalDate day, int minute) {
        KitBox kit = office.shelfKits.removeFirst();
        String other = event.equals("sent") ? "SOUTH" : "";
        move(day, minute, "event", event, "kit", kit.serial(), "other_site", other);
        if (office.contested && event.equals("sent")) {
            move(day.plusDays(3), 0, "event", "arrived", "kit", kit.serial(), "other_site", other);
        }
    }

    private void loose(String event, LocalDate day, String part, int quantity) {
        boolean away = event.equals("sent") || event.equals("arrived");
        move(
                day,
                20,
                "event",
                event,
                "part",
                part,
                "quantity",
                "" + quantity,
                "other_site",
                away ? "SOUTH" : "");
        int sign = event.equals("arrived") ? 1 : -1;
        office.shelf.change(office.at(day, 10, 20), part, new BigDecimal(sign * quantity));
    }

    private void move(LocalDate day, int minute, String... said) {
        String[] cells = {
            "at",
            office.time(office.at(day, 10, minute)),
            "by",
            office.clerk(),
            "ref",
            office.next("M")
        };
        String[] all = java.util.Arrays.copyOf(cells, cells.length + said.length);
        System.arraycopy(said, 0, all, cells.length, said.length);
        office.out.row("moves", all);
    }

    private void count(LocalDate day) {
        Instant at = office.at(day, 18, 30);
        for (Map.Entry<String, BigDecimal> book : office.shelf.settle(at).entrySet()) {
            boolean measured = office.packs.measured(book.getKey());
            if (LOOSE.contains(book.getKey()) && !measured && book.getValue().signum() >= 0) {
                BigDecimal counted = counted(book.getValue());
                count(at, "part", book.getKey(), counted.toPlainString());
                office.shelf.counted(book.getKey(), counted);
            }
        }
        for (int i = 0; i < 6; i++) {
            KitBox kit = office.shelfKits.removeFirst();
            boolean lost = office.dice.percent(8);
            count(at, "kit", kit.serial(), lost ? "0" : "1");
            if (!lost) {
                office.shelfKits.addLast(kit);
            }
        }
        while (!office.emptiedKits.isEmpty()) {
            count(at, "kit", office.emptiedKits.removeFirst(), "0");
        }
        if (office.dice.percent(40)) {
            count(at, "kit", office.next("K-9"), "0");
        }
    }

    private BigDecimal counted(BigDecimal book) {
        if (office.dice.percent(93)) {
            return book;
        }
        return book.add(new BigDecimal(office.dice.between(1, 4)));
    }

    private void count(Instant at, String heading, String name, String quantity) {
        office.out.row(
                "counts",
                "counted_at",
                office.time(at),
                heading,
                name,
                "quantity",
                quantity,
                "by",
                office.clerk(),
                "ref",
                office.ref("N"));
    }
}
