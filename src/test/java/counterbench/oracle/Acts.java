package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which account each act moves goods from and to, as the table of acts has it. */
final class Acts {

    private final World world;
    private final Bookkeeper books;
    private final Ledger ledger;
    private final Map<String, Set<String>> holders = new LinkedHashMap<>();
    private final Map<String, String> lastIssuedTo = new LinkedHashMap<>();

    Acts(World world, Bookkeeper books) {
        this.world = world;
        this.books = books;
        this.ledger = books.ledger;
    }

    void receive(Facts.Kit kit) {
        world.packs
                .contents(kit.kitPart(), kit.revision(), world.clock.day(kit.at()))
                .forEach(
                        (part, quantity) -> {
                            BigDecimal missing = kit.missing().getOrDefault(part, BigDecimal.ZERO);
                            BigDecimal came = quantity.subtract(missing);
                            move(
                                    kit.at(),
                                    "SUPPLIER",
                                    Bookkeeper.kit(kit.kit()),
                                    part,
                                    came,
                                    kit.kit());
                        });
    }

    void receive(Facts.Receipt receipt) {
        move(receipt.at(), "SUPPLIER", "STORE", receipt.part(), receipt.quantity(), "");
    }

    void issue(Facts.Issue issue) {
        String bench = Bookkeeper.bench(issue.job());
        if (issue.kit().isEmpty()) {
            move(issue.at(), "STORE", bench, issue.part(), issue.quantity(), "");
            return;
        }
        moveAll(issue.at(), Bookkeeper.kit(issue.kit()), bench, issue.kit());
        holders(issue.kit()).add(issue.job());
        lastIssuedTo.put(issue.kit(), issue.job());
    }

    void use(Facts.Use use) {
        String kit = world.kitOf(use);
        String bench = Bookkeeper.bench(use.job());
        boolean stays = use.condition().equals("reused") || use.condition().equals("taken-off");
        if (!stays && !use.kit().isEmpty() && !world.kitsOf(use.job()).contains(use.kit())) {
            fetch(use);
        }
        switch (use.condition()) {
            case "new" -> move(use, bench, "VEHICLE(" + use.job() + ")", kit);
            case "scrapped" -> move(use, bench, "SCRAP", kit);
            case "put-back" ->
                    move(use, bench, use.kit().isEmpty() ? "STORE" : Bookkeeper.kit(kit), kit);
            case "on-core" -> move(use, bench, "CORE(" + coreOf(use) + ")", kit);
            case "taken-off" -> {
                if (use.was().equals("new")) {
                    move(use, "VEHICLE(" + use.job() + ")", "SCRAP", kit);
                }
            }
            default -> {}
        }
    }

    private String coreOf(Facts.Use use) {
        return use.core().isEmpty()
                ? world.coresOfJob.getOrDefault(use.job(), List.of()).stream()
                        .map(c -> c.tag)
                        .findFirst()
                        .orElse("")
                : use.core();
    }

    /** Brings the part of a kit that was not issued to this job from its kit or another bench. */
    private void fetch(Facts.Use use) {
        List<String> places = new ArrayList<>();
        places.add(Bookkeeper.kit(use.kit()));
        holders(use.kit()).stream()
                .filter(j -> !j.equals(use.job()))
                .forEach(j -> places.add(Bookkeeper.bench(j)));
        BigDecimal wanted = use.quantity();
        for (String place : places) {
            BigDecimal there = ledger.heldOfKit(place, use.kit(), use.part());
            BigDecimal taken = wanted.min(there.max(BigDecimal.ZERO));
            move(use.at(), place, Bookkeeper.bench(use.job()), use.part(), taken, use.kit());
            wanted = wanted.subtract(taken);
        }
        holders(use.kit()).add(use.job());
    }

    void movement(Facts.Movement m) {
        String transit = "TRANSIT(" + m.otherSite() + ")";
        String here = m.kit().isEmpty() ? "STORE" : Bookkeeper.kit(m.kit());
        switch (m.event()) {
            case "returned" -> movement(m, here, "RETURNED");
            case "scrapped" -> movement(m, here, "SCRAP");
            case "sent" -> movement(m, here, transit);
            case "arrived" -> movement(m, transit, here);
            case "short" -> movement(m, whereMissed(m, here), "SUPPLIER");
            default -> throw new IllegalArgumentException(m.event());
        }
    }

    /** A part found missing is missed from the kit, or from the bench to which the kit went. */
    private String whereMissed(Facts.Movement m, String here) {
        String job = lastIssuedTo.get(m.kit());
        boolean inKit = ledger.heldOfKit(here, m.kit(), m.part()).signum() > 0;
        return job == null || inKit ? here : Bookkeeper.bench(job);
    }

    private void movement(Facts.Movement m, String from, String to) {
        if (m.part().isEmpty()) {
            moveAll(m.at(), from, to, m.kit());
        } else {
            BigDecimal all = ledger.heldOfKit(from, m.kit(), m.part());
            move(m.at(), from, to, m.part(), m.quantity().orElse(all), m.kit());
        }
    }

    void count(Facts.Count count) {
        if (count.kit().isEmpty()) {
            BigDecimal book = ledger.balance("STORE", count.part());
            books.lastStoreCount.put(
                    new Bookkeeper.Noted(world.clock.month(count.at()).toString(), count.part()),
                    count.quantity());
            if (count.quantity().compareTo(book) != 0) {
                books.differences.put(new Bookkeeper.Noted("STORE", count.part()), count.at());
                move(
                        count.at(),
                        "COUNT",
                        "STORE",
                        count.part(),
                        count.quantity().subtract(book),
                        "");
            }
            return;
        }
        String account = Bookkeeper.kit(count.kit());
        boolean there = ledger.held(account).values().stream().anyMatch(q -> q.signum() > 0);
        boolean counted = count.quantity().signum() > 0;
        if (there != counted) {
            books.differences.put(new Bookkeeper.Noted(account, ""), count.at());
            if (there) {
                moveAll(count.at(), account, "COUNT", count.kit());
            } else {
                world.contentsOfKit
                        .getOrDefault(count.kit(), Map.of())
                        .forEach((p, q) -> move(count.at(), "COUNT", account, p, q, count.kit()));
            }
        }
    }

    /** What is left of a measured part when its job is completed cannot be kept. */
    void scrapRest(Facts.Job job) {
        Map.copyOf(ledger.held(Bookkeeper.bench(job.job())))
                .forEach(
                        (part, left) -> {
                            if (left.signum() > 0 && world.measured(part)) {
                                move(
                                        end(job),
                                        Bookkeeper.bench(job.job()),
                                        "SCRAP",
                                        part,
                                        left,
                                        "");
                            }
                        });
    }

    private void moveAll(Instant at, String from, String to, String kit) {
        ledger.heldOfKit(from, kit)
                .forEach((part, q) -> move(at, from, to, part, q.max(BigDecimal.ZERO), kit));
    }

    private void move(Facts.Use use, String from, String to, String kit) {
        move(use.at(), from, to, use.part(), use.quantity(), kit);
    }

    /** A negative quantity is a move the other way round. */
    private void move(Instant at, String from, String to, String part, BigDecimal q, String kit) {
        if (q.signum() < 0) {
            ledger.move(at, to, from, part, q.negate(), kit);
        } else {
            ledger.move(at, from, to, part, q, kit);
        }
    }

    private Set<String> holders(String kit) {
        return holders.computeIfAbsent(kit, k -> new LinkedHashSet<>());
    }

    static Instant end(Facts.Job job) {
        return job.endedAt().orElseThrow();
    }
}
