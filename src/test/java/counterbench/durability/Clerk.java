package counterbench.durability;

import counterbench.acts.Act;
import counterbench.acts.IssueKit;
import counterbench.acts.IssuePart;
import counterbench.acts.ReceiveKits;
import counterbench.acts.ReceivePart;
import counterbench.acts.Stamp;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.db.TestStores;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.people.store.StaffBook;
import counterbench.shared.Quantity;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.Set;

/**
 * One of several processes that act at one site at the same time, on the same few kits, jobs and
 * parts. It says on its output what was acknowledged, and which of its acts were refused.
 */
final class Clerk {
    static final int KITS = 400;
    static final int JOBS = 100;
    static final List<String> LOOSE = List.of("CC-901", "CC-902");
    private static final Person HAL = new Person("Hal", Set.of(Role.PARTS));

    private final Store store;
    private final Site site;
    private final Random random;
    private final PrintStream out;

    private Clerk(Store store, Site site, long seed, PrintStream out) {
        this.store = store;
        this.site = site;
        this.random = new Random(seed);
        this.out = out;
    }

    /**
     * Acts.
     *
     * @param args the home folder, the server's address or nothing, the seed, how many acts
     */
    public static void main(String[] args) throws Exception {
        if (System.in.read() < 0) {
            return;
        }
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        try (Store store = TestStores.open(StoreAddress.of(Path.of(args[0]), args[1]))) {
            Site site = new StaffBook(store).sites().get(0);
            Clerk clerk = new Clerk(store, site, Long.parseLong(args[2]), out);
            for (int i = Integer.parseInt(args[3]); i > 0; i--) {
                clerk.act();
            }
            out.println("done");
        }
    }

    private void act() {
        Stamp stamp = new Stamp(Instant.now(), HAL.name());
        String job = "J-" + random.nextInt(JOBS);
        String kit = "K-" + random.nextInt(KITS);
        String part = LOOSE.get(random.nextInt(LOOSE.size()));
        int some = 1 + random.nextInt(3);
        Quantity quantity = Quantity.of(some);
        switch (random.nextInt(4)) {
            case 0 -> say("kit-received " + kit, received(kit, stamp));
            case 1 -> say("kit-issued " + kit + " " + job, new IssueKit(kit, job, stamp));
            case 2 -> say("received " + part + " " + some, received(part, quantity, stamp));
            default ->
                    say(
                            "issued " + part + " " + some + " " + job,
                            new IssuePart(part, quantity, job, null, stamp));
        }
    }

    private static Act received(String kit, Stamp stamp) {
        return new ReceiveKits(
                List.of(kit),
                "CC-100-K",
                new ReceiveKits.Delivery(null, null, null, null, List.of(), null),
                stamp);
    }

    private static Act received(String part, Quantity quantity, Stamp stamp) {
        return new ReceivePart(
                part, quantity, new ReceivePart.Delivery(null, null, BigDecimal.ONE, null), stamp);
    }

    private void say(String what, Act act) {
        try {
            var by = new RecordAct.By(HAL, site, Instant.now(), "test", what);
            out.println(new RecordAct(store).run(by, act).entry().number() + " " + what);
        } catch (Refused e) {
            out.println("refused " + what + ": " + e.getMessage());
        }
    }
}
