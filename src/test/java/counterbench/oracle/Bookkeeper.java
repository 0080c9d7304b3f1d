package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Books every fact in the order of time, and notes what falls below zero or differs from a count.
 */
final class Bookkeeper {

    /** An account and part with the time at which something about it was first noted. */
    record Noted(String account, String part) {}

    private record Task(Instant at, int rank, int line, Runnable act) {}

    final Ledger ledger = new Ledger();
    final Map<Noted, Instant> belowZero = new LinkedHashMap<>();
    final Map<Noted, Instant> differences = new LinkedHashMap<>();
    final Map<Noted, BigDecimal> lastStoreCount = new LinkedHashMap<>();
    private final World world;
    private final Map<String, Set<String>> holders = new LinkedHashMap<>();
    private final Map<String, String> lastIssuedTo = new LinkedHashMap<>();

    Bookkeeper(World world) {
        this.world = world;
    }

    Bookkeeper book() {
        List<Task> tasks = tasks();
        int seen = 0;
        for (int i = 0; i < tasks.size(); i++) {
            tasks.get(i).act().run();
            boolean instantEnds =
                    i + 1 == tasks.size() || !tasks.get(i + 1).at().equals(tasks.get(i).at());
            if (instantEnds) {
                noteBelowZero(ledger.moves.subList(seen, ledger.moves.size()));
                seen = ledger.moves.size();
            }
        }
        return this;
    }

    private List<Task> tasks() {
        List<Task> tasks = new ArrayList<>();
        Facts facts = world.facts;
        facts.kits.values().forEach(k -> tasks.add(task(k, 0, () -> receive(k))));
        facts.receipts.forEach(r -> tasks.add(task(r, 0, () -> receive(r))));
        facts.movements.forEach(m -> tasks.add(task(m, rank(m), () -> movement(m))));
        facts.issues.forEach(i -> tasks.add(task(i, 2, () -> issue(i))));
        facts.uses.forEach(u -> tasks.add(task(u, 3, () -> use(u))));
        facts.counts.forEach(c -> tasks.add(task(c, 5, () -> count(c))));
        facts.jobs.values().stream()
                .filter(Facts.Job::completed)
                .forEach(j -> tasks.add(new Task(end(j), 6, 0, () -> scrapRest(j))));
        tasks.sort(
                Comparator.comparing(Task::at).thenComparing(Task::rank).thenComparing(Task::line));
        return tasks;
    }

    private static Task task(Facts.Fact fact, int rank, Runnable act) {
        return new Task(fact.at(), rank, fact.line(), act);
    }

    private static int rank(Facts.Movement move) {
        return move.event().equals("arrived") ? 1 : 4;
    }

    private static Instant end(Facts.Job job) {
        return job.endedAt().orElseThrow();
    }

    private void receive(Facts.Kit kit) {
        world.packs
                .contents(kit.kitPart(), kit.revision(), world.clock.day(kit.at()))
                .forEach(
                        (part, quantity) -> {
                            BigDecimal missing = kit.missing().getOrDefault(part, BigDecimal.ZERO);
                            BigDecimal came = quantity.subtract(missing);
                            move(kit.at(), "SUPPLIER", kit(kit.kit()), part, came, kit.kit());
                        });
    }

    private void receive(Facts.Receipt receipt) {
        move(receipt.at(), "SUPPLIER", "STORE", receipt.part(), receipt.quantity(), "");
    }

    private void issue(Facts.Issue issue) {
        String bench = bench(issue.job());
        if (issue.kit().isEmpty()) {
            move(issue.at(), "STORE", bench, issue.part(), issue.quantity(), "");
            return;
        }
        moveAll(issue.at(), kit(issue.kit()), bench, issue.kit());
        holders(issue.kit()).add(issue.job());
        lastIssuedTo.put(issue.kit(), issue.job());
    }

    private void use(Facts.Use use) {
        String kit = world.kitOf(use);
        String bench = bench(use.job());
        boolean stays = use.condition().equals("reused") || use.condition().equals("taken-off");
        if (!stays && !use.kit().isEmpty() && !world.kitsOf(use.job()).contains(use.kit())) {
            fetch(use);
        }
        switch (use.condition()) {
            case "new" -> move(use, bench, "VEHICLE(" + use.job() + ")", kit);
            case "scrapped" -> move(use, bench, "SCRAP", kit);
            case "put-back" -> move(use, bench, use.kit().isEmpty() ? "STORE" : kit(kit), kit);
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
        places.add(kit(use.kit()));
        holders(use.kit()).stream()
                .filter(j -> !j.equals(use.job()))
                .forEach(j -> places.add(bench(j)));
        BigDecimal wanted = use.quantity();
        for (String place : places) {
            BigDecimal there = ledger.heldOfKit(place, use.kit(), use.part());
            BigDecimal taken = wanted.min(there.max(BigDecimal.ZERO));
            move(use.at(), place, bench(use.job()), use.part(), taken, use.kit());
            wanted = wanted.subtract(taken);
        }
        holders(use.kit()).add(use.job());
    }

    private void movement(Facts.Movement m) {
        String transit = "TRANSIT(" + m.otherSite() + ")";
        String here = m.kit().isEmpty() ? "STORE" : kit(m.kit());
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
        return job == null || inKit ? here : bench(job);
    }

    private void movement(Facts.Movement m, String from, String to) {
        if (m.part().isEmpty()) {
            moveAll(m.at(), from, to, m.kit());
        } else {
            BigDecimal all = ledger.heldOfKit(from, m.kit(), m.part());
            move(m.at(), from, to, m.part(), m.quantity().orElse(all), m.kit());
        }
    }

    private void count(Facts.Count count) {
        if (count.kit().isEmpty()) {
            BigDecimal book = ledger.balance("STORE", count.part());
            lastStoreCount.put(
                    new Noted(world.clock.month(count.at()).toString(), count.part()),
                    count.quantity());
            if (count.quantity().compareTo(book) != 0) {
                differences.putIfAbsent(new Noted("STORE", count.part()), count.at());
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
        String account = kit(count.kit());
        boolean there = ledger.held(account).values().stream().anyMatch(q -> q.signum() > 0);
        boolean counted = count.quantity().signum() > 0;
        if (there != counted) {
            differences.putIfAbsent(new Noted(account, ""), count.at());
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
    private void scrapRest(Facts.Job job) {
        Map.copyOf(ledger.held(bench(job.job())))
                .forEach(
                        (part, left) -> {
                            if (left.signum() > 0 && world.measured(part)) {
                                move(end(job), bench(job.job()), "SCRAP", part, left, "");
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

    private void noteBelowZero(List<Ledger.Move> moves) {
        for (Ledger.Move move : moves) {
            for (String account : List.of(move.from(), move.to())) {
                boolean judged = account.equals("STORE") || account.startsWith("KIT(");
                if (judged && ledger.balance(account, move.part()).signum() < 0) {
                    belowZero.putIfAbsent(new Noted(account, move.part()), move.at());
                }
            }
        }
    }

    private Set<String> holders(String kit) {
        return holders.computeIfAbsent(kit, k -> new LinkedHashSet<>());
    }

    static String kit(String serial) {
        return "KIT(" + serial + ")";
    }

    static String bench(String job) {
        return "BENCH(" + job + ")";
    }
}
