package counterbench.oracle;

import static counterbench.oracle.Fault.*;

import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/** One job after another, from its vehicle to its credits. */
final class JobWriter {

    private static final Fault[] UNFINISHED = {
        IDLE, NOT_NEEDED, ABANDONED_CLEAN, ABANDONED_LEFT, CORE_OF_OPEN_JOB, CORE_OF_ABANDONED
    };

    private final Office office;
    private final VehicleWriter vehicles;
    private final KitWriter kits;
    private final ShippingWriter shipping;
    private final ClaimWriter claims;
    private final FaultDeck deck;
    private final int faultPercent;

    JobWriter(Office office, VehicleWriter vehicles, KitWriter kits, int faultPercent) {
        this.office = office;
        this.vehicles = vehicles;
        this.kits = kits;
        this.shipping = new ShippingWriter(office);
        this.claims = new ClaimWriter(office);
        this.deck = new FaultDeck(office.dice);
        this.faultPercent = faultPercent;
    }

    void write(String campaign, LocalDate day) {
        Pack pack = office.packs.inForce(campaign, day);
        boolean odd = office.dice.percent(faultPercent);
        Optional<Fault> fault = odd ? deck.deal(features(pack, day)) : atTheEdge(day);
        Instant opened = office.at(day, office.dice.between(7, 9), office.dice.between(0, 59));
        JobStory story = vehicles.open(pack, opened, fault);
        HardwareWriter hardware = new HardwareWriter(office, kits, story);
        hardware.issueKits();
        if (story.is(CORE_OF_OPEN_JOB, CORE_OF_ABANDONED)) {
            new CoreWriter(office, story).write(story.tick(20));
            shipping.write(story);
        }
        if (story.is(UNFINISHED)) {
            unfinished(story, hardware);
        } else {
            finished(story, hardware);
        }
    }

    /** Around the days on which the patience with open jobs ends, some are open. */
    private Optional<Fault> atTheEdge(LocalDate day) {
        LocalDate edge = office.clock.day(office.asOf).minusDays(office.site.idleDays());
        boolean near = !day.isBefore(edge.minusDays(2)) && !day.isAfter(edge.plusDays(1));
        return near && office.dice.percent(30) ? Optional.of(IDLE) : Optional.empty();
    }

    private void unfinished(JobStory story, HardwareWriter hardware) {
        boolean open = story.is(IDLE, CORE_OF_OPEN_JOB);
        if (!open) {
            hardware.undo();
            story.completed = Office.plus(story.clock, 30);
        }
        job(story, open ? "" : story.is(NOT_NEEDED) ? "not-needed" : "abandoned");
    }

    private void finished(JobStory story, HardwareWriter hardware) {
        CoreWriter cores = new CoreWriter(office, story);
        cores.write(story.tick(20));
        hardware.fit();
        hardware.finish();
        new MarkWriter(office, story).write();
        story.completed = completion(story);
        job(story, office.dice.percent(50) ? "completed" : "");
        if (story.is(USED_AFTER_COMPLETION)) {
            new WasherFaults(office, kits, story, new BenchWriter(office, story))
                    .fitAfterCompletion();
        }
        shipping.write(story);
        claims.write(story);
        remember(story);
    }

    private Instant completion(JobStory story) {
        LocalDate day = office.clock.day(story.clock);
        boolean last = day.plusDays(1).getDayOfMonth() == 1;
        if (last && office.dice.percent(25)) {
            return office.dice.percent(50)
                    ? office.at(day, 23, 59)
                    : office.at(day.plusDays(1), 0, 0);
        }
        boolean night = story.is(DRAIN_NIGHT);
        return night ? office.at(day.plusDays(1), 8, 30) : story.tick(office.dice.between(3, 20));
    }

    private void job(JobStory story, String outcome) {
        String vin = story.is(VIN_LOWER) ? spaced(story.vin) : story.vin;
        office.out.row(
                "jobs",
                "job",
                story.job,
                "campaign",
                story.pack.campaign(),
                "vin",
                vin,
                "opened_at",
                office.time(story.opened),
                "work_order",
                "W" + story.job.substring(2),
                "technician",
                office.technician(),
                "completed_at",
                story.is(IDLE, CORE_OF_OPEN_JOB) ? "" : office.time(story.completed),
                "outcome",
                outcome,
                "redo_of",
                story.redoOf,
                "mileage",
                "" + office.dice.between(900, 180_000),
                "x-story",
                story.fault.map(Fault::name).orElse(""));
    }

    private static String spaced(String vin) {
        String lower = vin.toLowerCase(java.util.Locale.ROOT);
        return lower.substring(0, 3) + " " + lower.substring(3, 9) + " " + lower.substring(9);
    }

    private void remember(JobStory story) {
        boolean plain = story.fault.isEmpty();
        LocalDate day = office.clock.day(story.completed);
        if (plain) {
            office.lastVisit.putIfAbsent(
                    story.pack.campaign(), new Office.Visit(story.job, story.vin, story.real, day));
        }
        if (plain && story.kits.size() == 1 && !story.backIntoKit) {
            if (office.emptyKits.size() > 40) {
                office.emptyKits.removeFirst();
            }
            office.emptyKits.add(new Office.Returned(story.kits.get(0), story.completed));
        }
        boolean emptied = plain && story.kits.size() == 1 && office.emptiedKits.size() < 5;
        if (emptied && !story.backIntoKit && office.dice.percent(20)) {
            office.emptiedKits.add(story.kits.get(0).serial());
        }
    }

    private Set<String> features(Pack pack, LocalDate day) {
        Set<String> features = new LinkedHashSet<>();
        boolean lift = pack.campaign().equals("HX-26-031");
        boolean rails = pack.campaign().equals("HX-26-044");
        offer(features, !pack.cores().isEmpty(), "core");
        offer(features, lift || rails, "matched", "sealant", "reading", "torque-nm");
        offer(features, lift, "replaces", "rise");
        offer(features, !lift, "one-revision");
        offer(features, office.contested, "contested");
        offer(features, !pack.campaign().equals("HX-26-060"), "wait", "single");
        offer(features, pack.checkDigit(), "digit");
        offer(features, !pack.checkDigit(), "no-digit");
        offer(features, VehicleWriter.hasList(pack), "list", "attributes");
        offer(features, pack.needs().equals("none"), "needs-none");
        LocalDate today = office.clock.day(office.asOf);
        offer(features, day.isBefore(today.minusDays(120)), "early");
        offer(features, day.isAfter(today.minusDays(40)), "recent");
        boolean night = day.toString().endsWith("-03-07") || day.toString().endsWith("-10-31");
        offer(features, night, "night");
        return features;
    }

    private static void offer(Set<String> features, boolean offered, String... names) {
        if (offered) {
            features.addAll(Set.of(names));
        }
    }
}
