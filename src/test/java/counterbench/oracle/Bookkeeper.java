package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
    private final Acts acts;

    Bookkeeper(World world) {
        this.world = world;
        this.acts = new Acts(world, this);
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
        facts.kits.values().forEach(k -> tasks.add(task(k, 0, () -> acts.receive(k))));
        facts.receipts.forEach(r -> tasks.add(task(r, 0, () -> acts.receive(r))));
        facts.movements.forEach(m -> tasks.add(task(m, rank(m), () -> acts.movement(m))));
        facts.issues.forEach(i -> tasks.add(task(i, 2, () -> acts.issue(i))));
        facts.uses.forEach(u -> tasks.add(task(u, 3, () -> acts.use(u))));
        facts.counts.forEach(c -> tasks.add(task(c, 5, () -> acts.count(c))));
        facts.jobs.values().stream()
                .filter(Facts.Job::completed)
                .forEach(j -> tasks.add(new Task(Acts.end(j), 6, 0, () -> acts.scrapRest(j))));
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

    static String kit(String serial) {
        return "KIT(" + serial + ")";
    }

    static String bench(String job) {
        return "BENCH(" + job + ")";
    }
}
