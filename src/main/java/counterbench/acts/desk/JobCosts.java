package counterbench.acts.desk;

import counterbench.acts.JobState;
import counterbench.claims.draft.PartsCost;
import counterbench.claims.draft.PartsCost.Item;
import counterbench.shared.Quantity;
import counterbench.stock.Account;
import counterbench.stock.CostLayers.Layer;
import counterbench.stock.Issue;
import counterbench.stock.Kit;
import counterbench.stock.Move;
import counterbench.stock.ReceivedKit;
import counterbench.stock.Source;
import counterbench.stock.StoreCosts;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a job's parts cost: each kit once and whole, by the job that it was issued to last, less
 * what was put back of it at the pack's value; loose parts what their receipts cost, first in,
 * first out.
 */
final class JobCosts {
    private final JobState job;
    private final List<String> unknown = new ArrayList<>();
    private final List<Item> items = new ArrayList<>();

    private JobCosts(JobState job) {
        this.job = job;
    }

    static PartsCost of(JobState job, StoreCosts store) {
        JobCosts costs = new JobCosts(job);
        job.kits().forEach(costs::addKit);
        store.ofJob(job.name()).forEach(costs::addLoose);
        return new PartsCost(costs.items, costs.unknown);
    }

    private void addKit(String serial) {
        if (!job.name().equals(lastJobOf(serial).orElse(null)) || isBackWhole(serial)) {
            return;
        }
        Optional<ReceivedKit> kit = received(serial);
        @Nullable BigDecimal cost = kit.map(ReceivedKit::kit).map(Kit::unitCost).orElse(null);
        if (cost == null) {
            unknown.add(
                    "nobody knows what kit "
                            + serial
                            + " cost: import its row of kits with the cost");
            return;
        }
        items.add(new Item("kit " + serial, Quantity.of(1), cost));
        putBack(serial).forEach((part, back) -> deduct(kit, part, back));
    }

    private void deduct(Optional<ReceivedKit> kit, String part, Quantity back) {
        BigDecimal value =
                kit.map(ReceivedKit::terms).stream()
                        .flatMap(terms -> terms.contents().stream())
                        .filter(line -> line.part().equals(part))
                        .map(line -> line.value())
                        .findFirst()
                        .orElse(BigDecimal.ZERO);
        items.add(new Item(part + " of it put back", back, value.negate()));
    }

    /** A kit that was issued again is the later job's to claim. */
    private Optional<String> lastJobOf(String serial) {
        return job.component().facts().issues().stream()
                .filter(issue -> serial.equals(issue.kit()))
                .max(Comparator.comparing(Issue::at).thenComparing(Issue::address))
                .map(Issue::job);
    }

    private boolean isBackWhole(String serial) {
        Map<String, Quantity> left = new TreeMap<>();
        for (Move move : ofKitBetween(serial, Account.kit(serial))) {
            boolean out = move.from().equals(Account.kit(serial));
            left.merge(
                    move.part(), out ? move.quantity() : move.quantity().negate(), Quantity::plus);
        }
        return !left.isEmpty() && left.values().stream().allMatch(Quantity::isZero);
    }

    private Map<String, Quantity> putBack(String serial) {
        Map<String, Quantity> back = new TreeMap<>();
        Stream.concat(
                        ofKitBetween(serial, Account.STORE).stream(),
                        ofKitBetween(serial, Account.kit(serial)).stream())
                .filter(move -> move.from().equals(Account.bench(job.name())))
                .forEach(move -> back.merge(move.part(), move.quantity(), Quantity::plus));
        return back;
    }

    private List<Move> ofKitBetween(String serial, Account place) {
        Account bench = Account.bench(job.name());
        return job.moves().stream()
                .filter(move -> move.source().equals(Source.kit(serial)))
                .filter(move -> move.touches(bench) && move.touches(place))
                .toList();
    }

    private Optional<ReceivedKit> received(String serial) {
        return Stream.concat(
                        job.component().facts().kits().stream(),
                        job.component().facts().arriving().stream())
                .filter(kit -> kit.kit().kit().equals(serial))
                .findFirst();
    }

    private void addLoose(String part, List<Layer> layers) {
        for (Layer layer : layers) {
            @Nullable BigDecimal one = layer.unitCost();
            if (one == null) {
                unknown.add(
                        "nobody knows what "
                                + layer.quantity()
                                + " of "
                                + part
                                + " cost: import the receipt with its cost");
            } else {
                items.add(new Item("loose part " + part, layer.quantity(), one));
            }
        }
    }
}
