package counterbench.acts.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.acts.Act;
import counterbench.acts.Shipment;
import counterbench.acts.Stamp;
import counterbench.acts.bench.OpenJob;
import counterbench.acts.rack.AddToShipment;
import counterbench.acts.rack.ArriveCores;
import counterbench.acts.rack.BeginDrain;
import counterbench.acts.rack.EndDrain;
import counterbench.acts.rack.OpenShipment;
import counterbench.acts.rack.PackCore;
import counterbench.acts.rack.PlugCore;
import counterbench.acts.rack.RemoveCore;
import counterbench.acts.rack.SendCores;
import counterbench.acts.rack.Ship;
import counterbench.acts.rack.TakeOffShipment;
import counterbench.care.store.VerifyJournal;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.people.store.JooqSites;
import counterbench.review.store.FindingBook;
import counterbench.review.store.ReviewSite;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shell.Larkmere;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Three racks, and where each core must be: by owner and tag. */
final class Yards {
    private static final Person MAREN = new Person("Maren", Set.of(Role.LEAD));
    private static final Site WEST =
            new Site(
                    3,
                    "WEST",
                    "West garage",
                    Larkmere.NORTH.zone(),
                    Larkmere.NORTH.currency(),
                    Larkmere.NORTH.patience());
    private static final List<Site> SITES = List.of(Larkmere.NORTH, Larkmere.SOUTH, WEST);

    /** Two sites hang the same tags on their cores. */
    private static final List<String> TAGS = List.of("C-1", "C-2", "C-3");

    private final Larkmere larkmere;
    private final Random random;
    private final Map<String, String> expected = new TreeMap<>();
    private final Map<String, String> onShipment = new HashMap<>();
    private final Set<String> draining = new HashSet<>();
    private Instant now = Larkmere.AS_OF;
    private int moved;

    Yards(Larkmere larkmere, long seed) {
        this.larkmere = larkmere;
        this.random = new Random(seed);
    }

    private Stamp stamp() {
        now = now.plusSeconds(60);
        return new Stamp(now, MAREN.name());
    }

    private boolean does(Site site, Act act) {
        try {
            new RecordAct(larkmere.store())
                    .run(new RecordAct.By(MAREN, site, now, "test", "test"), act);
            return true;
        } catch (Refused e) {
            return false;
        }
    }

    /** Where each core must be, by owner and tag. */
    Map<String, String> expected() {
        return expected;
    }

    /** How many acts moved a core to another yard. */
    int moved() {
        return moved;
    }

    /** Sets up a third site; of two sites hangs tags on cores, and opens a shipment at each. */
    void begin() {
        larkmere.store().run(sql -> JooqSites.add(sql, WEST));
        for (Site site : List.of(Larkmere.NORTH, Larkmere.SOUTH)) {
            OpenJob job =
                    new OpenJob(
                            "J-" + site.site(),
                            "HB-0417",
                            "0LKPT6D41NA002118",
                            new OpenJob.Details(null, null, null, null),
                            stamp());
            assertThat(does(site, job)).isTrue();
            OpenShipment open =
                    new OpenShipment(new Shipment("S-1", "Two Rivers", "T", null, "Maren"));
            assertThat(does(site, open)).isTrue();
            for (String tag : TAGS) {
                String serial = "N" + tag + site.site();
                Act removal = new RemoveCore(tag, job.job(), serial, null, stamp());
                assertThat(does(site, removal)).isTrue();
                expected.put(site.site() + "/" + tag, site.site());
            }
        }
    }

    /** Does something, and says to what. */
    String step() {
        Site owner = SITES.get(random.nextInt(2));
        String tag = TAGS.get(random.nextInt(TAGS.size()));
        Site other = SITES.get(random.nextInt(SITES.size()));
        String said = owner.site() + "/" + tag + " and " + other.site();
        switch (random.nextInt(12)) {
            case 0, 1, 2, 3 -> send(owner, tag, other);
            case 4 -> arrive(other, tag, random.nextBoolean() ? owner : null);
            case 5, 6, 7 -> arriveWhereItGoes(tag);
            case 8 -> drain(owner, tag);
            case 9 -> handle(owner, tag, random.nextBoolean() ? plug(tag) : pack(tag));
            case 10 -> mayGoOntoShipment(owner, tag, other);
            default -> offShipment(owner, tag);
        }
        return said;
    }

    /** Seldom, since what is on a shipment does not travel. */
    private void mayGoOntoShipment(Site owner, String tag, Site other) {
        if (random.nextInt(3) == 0) {
            ontoShipment(owner, tag);
        } else {
            send(owner, tag, other);
        }
    }

    private void drain(Site owner, String tag) {
        String core = owner.site() + "/" + tag;
        if (!draining.contains(core)) {
            if (handle(owner, tag, new BeginDrain(tag, stamp()))) {
                draining.add(core);
            }
        } else if (handle(owner, tag, new EndDrain(tag, stamp()))) {
            draining.remove(core);
        }
    }

    private Act plug(String tag) {
        return new PlugCore(tag, 1L, stamp());
    }

    private Act pack(String tag) {
        return new PackCore(tag, "carton", null, stamp());
    }

    /** Of a core that drains, half the time after the end of that. */
    private void send(Site owner, String tag, Site to) {
        String core = owner.site() + "/" + tag;
        if (draining.contains(core) && random.nextBoolean()) {
            drain(owner, tag);
        }
        boolean may =
                SITES.stream().anyMatch(s -> s.site().equals(expected.get(core)))
                        && !to.site().equals(expected.get(core))
                        && !onShipment.containsKey(core)
                        && !draining.contains(core);
        assertThat(does(owner, new SendCores(List.of(tag), to.site(), stamp())))
                .as("send " + core)
                .isEqualTo(may);
        if (may) {
            expected.put(core, Places.ON_THE_WAY + to.site());
            moved++;
        }
    }

    /** At the yard to which one of the two cores of that tag was sent, if one was. */
    private void arriveWhereItGoes(String tag) {
        expected.entrySet().stream()
                .filter(e -> e.getKey().endsWith("/" + tag))
                .map(Map.Entry::getValue)
                .filter(where -> where.startsWith(Places.ON_THE_WAY))
                .flatMap(where -> SITES.stream().filter(s -> where.endsWith(s.site())))
                .findFirst()
                .ifPresent(here -> arrive(here, tag, null));
    }

    private void arrive(Site here, String tag, @Nullable Site of) {
        Stamp stamp = stamp();
        List<String> coming =
                expected.entrySet().stream()
                        .filter(e -> e.getKey().endsWith("/" + tag))
                        .filter(e -> of == null || e.getKey().startsWith(of.site() + "/"))
                        .filter(e -> e.getValue().equals(Places.ON_THE_WAY + here.site()))
                        .map(Map.Entry::getKey)
                        .toList();
        boolean done;
        try {
            new ReadIncoming(larkmere.store())
                    .of(here, List.of(tag), stamp.at(), now)
                    .byOwner(List.of(tag), of == null ? null : of.site(), null)
                    .forEach(
                            (site, tags) ->
                                    assertThat(
                                                    does(
                                                            site,
                                                            new ArriveCores(
                                                                    tags, here.site(), stamp)))
                                            .isTrue());
            done = true;
        } catch (Refused e) {
            done = false;
        }
        assertThat(done).as("arrive %s at %s", tag, here.site()).isEqualTo(coming.size() == 1);
        if (done) {
            expected.put(coming.get(0), here.site());
            moved++;
        }
    }

    /** What is on the way or gone takes no act; in a yard it may be refused for other reasons. */
    private boolean handle(Site owner, String tag, Act act) {
        String where = expected.getOrDefault(owner.site() + "/" + tag, "nowhere");
        boolean done = does(owner, act);
        assertThat(done && (where.startsWith(Places.ON_THE_WAY) || where.equals(Places.GONE)))
                .as("%s on %s", act, where)
                .isFalse();
        return done;
    }

    private void ontoShipment(Site owner, String tag) {
        String core = owner.site() + "/" + tag;
        String shipment = "S-" + (1 + count(owner));
        if (does(owner, new AddToShipment(shipment, List.of(tag), stamp()))) {
            onShipment.put(core, shipment);
            assertThat(
                            onShipment.entrySet().stream()
                                    .filter(e -> e.getValue().equals(shipment))
                                    .filter(e -> e.getKey().startsWith(owner.site()))
                                    .map(e -> expected.get(e.getKey()))
                                    .distinct())
                    .as("yards of a shipment")
                    .hasSize(1);
        }
    }

    private int count(Site owner) {
        return (int)
                expected.entrySet().stream()
                        .filter(e -> e.getKey().startsWith(owner.site() + "/"))
                        .filter(e -> e.getValue().equals(Places.GONE))
                        .map(e -> onShipment.get("left " + e.getKey()))
                        .distinct()
                        .count();
    }

    private void offShipment(Site owner, String tag) {
        String shipment = "S-" + (1 + count(owner));
        String core = owner.site() + "/" + tag;
        if (random.nextInt(8) > 0) {
            if (does(owner, new TakeOffShipment(shipment, List.of(tag), stamp()))) {
                onShipment.remove(core);
            }
        } else if (does(owner, new Ship(shipment, null, "as it is", stamp()))) {
            List<String> gone =
                    onShipment.entrySet().stream()
                            .filter(e -> e.getKey().startsWith(owner.site() + "/"))
                            .filter(e -> e.getValue().equals(shipment))
                            .map(Map.Entry::getKey)
                            .toList();
            gone.forEach(
                    left -> {
                        expected.put(left, Places.GONE);
                        onShipment.remove(left);
                        onShipment.put("left " + left, shipment);
                    });
            String next = "S-" + (1 + count(owner));
            assertThat(
                            does(
                                    owner,
                                    new OpenShipment(
                                            new Shipment(next, "Two Rivers", "T", null, "M"))))
                    .isTrue();
        }
    }

    /** Every place in which a core stands, by boards and transit; must be one for each. */
    Map<String, String> places() {
        return new Places(larkmere.store(), SITES, now).all();
    }

    /** The journals hold, and what was kept of the review is what a whole one says. */
    void verify() {
        FindingBook book = new FindingBook(larkmere.store());
        for (Site site : SITES) {
            assertThat(new VerifyJournal(larkmere.store()).run(site, now).broken()).isEmpty();
            assertThat(book.now(site, now, f -> true, n -> {}))
                    .isEqualTo(book.asOf(site, now, ReviewSite.NEWEST, f -> true, n -> {}));
        }
    }
}
