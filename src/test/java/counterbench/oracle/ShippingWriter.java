package counterbench.oracle;

import static counterbench.oracle.Fault.*;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.LinkedHashSet;
import java.util.Set;

/** Packs and ships the cores of a job, and writes what the return centre says. */
final class ShippingWriter {

    private final Office office;
    private final Set<String> opened = new LinkedHashSet<>();
    private int shipments;

    ShippingWriter(Office office) {
        this.office = office;
    }

    void write(JobStory story) {
        for (JobStory.Removed core : story.cores) {
            boolean odd = core.equals(story.cores.get(0)) && story.fault.isPresent();
            if (odd && story.is(DRAIN_NONE_UNPACKED)) {
                story.allCoresMeet = false;
                continue;
            }
            LocalDate packed = pack(story, core, odd);
            if (odd && story.is(NOT_SHIPPED)) {
                story.allCoresMeet = false;
                continue;
            }
            ship(story, core, odd, packed);
        }
    }

    private LocalDate pack(JobStory story, JobStory.Removed core, boolean odd) {
        LocalDate day = office.clock.day(core.ready()).plusDays(1);
        String packaging = core.item().packaging();
        if (odd && story.is(PACKED_WRONG, PACKED_AGAIN)) {
            event(core, "packed", office.at(day, 8, 5), "packaging", "bag");
        }
        if (odd && story.is(PACKED_UNSAID)) {
            event(core, "packed", office.at(day, 8, 10));
        } else if (!odd || !story.is(PACKED_WRONG, NOT_PACKED)) {
            event(core, "packed", office.at(day, 8, 20), "packaging", packaging);
        }
        return day;
    }

    private void ship(JobStory story, JobStory.Removed core, boolean odd, LocalDate packed) {
        LocalDate due = office.clock.day(story.completed).plusDays(core.item().returnWithinDays());
        Instant at = office.at(packed.with(TemporalAdjusters.next(DayOfWeek.FRIDAY)), 15, 30);
        String shipment = "S-" + office.clock.day(at) + "-" + story.pack.campaign().substring(6);
        if (odd && story.is(SHIPPED_LATE)) {
            at = office.at(due.plusDays(1), 0, 0);
            shipment = office.next("S-X");
        } else if (odd && story.is(SHIPPED_LAST_DAY)) {
            at = office.at(due, 23, 59);
            shipment = office.next("S-X");
        } else if (odd && story.is(ALL_ACKNOWLEDGED)) {
            shipment = office.next("S-X");
        }
        if (odd && story.is(SHIPMENT_CHANGED)) {
            event(core, "added", Office.plus(at, -90), "shipment", open(shipment));
            event(core, "taken-off", Office.plus(at, -60), "shipment", shipment);
            shipment = office.next("S-X");
        }
        event(core, "added", Office.plus(at, -30), "shipment", open(shipment));
        travel(core, at);
        event(core, "shipped", at, "shipment", shipment);
        story.coresShipped = later(story.coresShipped, at);
        if (odd && story.is(UNACKNOWLEDGED)) {
            story.coresAnswered = null;
        } else {
            answer(story, core, odd, shipment, at);
        }
    }

    /** Some go by way of another yard, which no rule asks. */
    private void travel(JobStory.Removed core, Instant shipped) {
        int way = Math.floorMod(core.tag().hashCode(), 6);
        if (way < 3) {
            event(core, "sent", Office.plus(shipped, -29), "other_site", "ELSEWHERE");
        }
        if (way < 2) {
            event(core, "arrived", Office.plus(shipped, -10), "other_site", "ELSEWHERE");
        }
    }

    private void answer(
            JobStory story, JobStory.Removed core, boolean odd, String shipment, Instant shipped) {
        LocalDate day = office.clock.day(shipped).plusDays(office.dice.between(6, 12));
        Instant at = office.at(day, office.dice.between(9, 16), office.dice.between(0, 59));
        String event = office.dice.percent(50) ? "received" : "accepted";
        if (odd && story.is(REJECTED, REJECTED_THEN_ACCEPTED)) {
            event = "rejected";
        } else if (odd && story.is(ACCEPTED_THEN_REJECTED)) {
            event = "accepted";
        }
        if (odd && story.is(RESHIPPED)) {
            say(core, shipment, "rejected", at);
            at = Office.plus(at, 4000);
            shipment = again(core, at);
            at = Office.plus(at, 9000);
        }
        if (odd && story.is(ALL_ACKNOWLEDGED)) {
            acknowledge(shipment, "received", at, "", "");
        } else {
            say(core, shipment, event, at);
        }
        if (odd && story.is(REJECTED_THEN_ACCEPTED)) {
            say(core, shipment, "accepted", Office.plus(at, 2000));
        } else if (odd && story.is(ACCEPTED_THEN_REJECTED)) {
            say(core, shipment, "rejected", Office.plus(at, 2000));
        }
        if (odd) {
            stray(story, shipment, at);
        }
        if (story.coresAnswered != null) {
            story.coresAnswered = later(story.coresAnswered, at);
        }
        office.acknowledgedElsewhere = core.tag();
    }

    private String again(JobStory.Removed core, Instant at) {
        String shipment = open(office.next("S-X"));
        event(core, "added", Office.plus(at, -30), "shipment", shipment);
        event(core, "shipped", at, "shipment", shipment);
        return shipment;
    }

    private void say(JobStory.Removed core, String shipment, String event, Instant at) {
        int way = office.dice.between(0, 9);
        boolean unique = core.serial().equals("SN" + core.tag().substring(2));
        if (way < 2) {
            event(core, event, at);
        } else if (way < 4 && unique) {
            acknowledge(shipment, event, at, "", core.serial());
        } else {
            acknowledge(shipment, event, at, core.tag(), "");
        }
    }

    private void stray(JobStory story, String shipment, Instant at) {
        if (story.is(STRAY_CORE)) {
            acknowledge(shipment, "received", at, office.next("C-9"), "");
        } else if (story.is(STRAY_SERIAL)) {
            acknowledge(shipment, "received", at, "", office.next("SN-9"));
        } else if (story.is(STRAY_ELSEWHERE) && !office.acknowledgedElsewhere.isEmpty()) {
            String other = office.next("S-X");
            open(other);
            acknowledge(other, "received", at, office.acknowledgedElsewhere, "");
        }
    }

    private void acknowledge(
            String shipment, String event, Instant at, String core, String serial) {
        office.out.row(
                "acknowledgements",
                "shipment",
                shipment,
                "at",
                office.time(at),
                "event",
                event,
                "core",
                core,
                "serial",
                serial,
                "reason",
                event.equals("rejected") ? "not drained, leaking" : "",
                "ref",
                office.ref("A"));
    }

    private String open(String shipment) {
        if (opened.add(shipment)) {
            office.out.row(
                    "shipments",
                    "shipment",
                    shipment,
                    "carrier",
                    "Greyline Freight",
                    "tracking",
                    "GF" + (10_000 + ++shipments),
                    "weight",
                    "" + office.dice.between(8, 90),
                    "weight_unit",
                    "kg",
                    "by",
                    office.clerk());
        }
        return shipment;
    }

    private void event(JobStory.Removed core, String event, Instant at, String... more) {
        String[] cells = {
            "core",
            core.tag(),
            "event",
            event,
            "at",
            office.time(at),
            "by",
            office.clerk(),
            "ref",
            office.ref("E")
        };
        String[] all = java.util.Arrays.copyOf(cells, cells.length + more.length);
        System.arraycopy(more, 0, all, cells.length, more.length);
        office.out.row("cores", all);
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }
}
