package counterbench.acts.rack;

import counterbench.acts.Holding;
import counterbench.acts.JobState;
import counterbench.campaign.Condition;
import counterbench.campaign.KitLine;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Quantity;
import counterbench.stock.Account;
import counterbench.stock.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The plugs that go from the job's bench onto the core. The book has some on the core already where
 * a sheet of uses said so, or where they were in it before.
 *
 * @param rows a use for each part number of plugs
 * @param missing how many the bench did not have
 */
record PlugsFromBench(String job, List<FactRow> rows, Quantity missing) {
    PlugsFromBench {
        rows = List.copyOf(rows);
    }

    static PlugsFromBench of(Handled core, int plugged) {
        JobState job = core.job();
        Quantity wanted =
                Quantity.of(core.history().plugs() + plugged).minus(onCore(core.tag(), job));
        List<FactRow> rows = new ArrayList<>();
        for (String part : plugs(job)) {
            Quantity taken = wanted.min(job.freeOnBench(part, core.stamp().at()));
            if (taken.isPositive()) {
                rows.add(row(core, part, taken));
                wanted = wanted.minus(taken);
            }
        }
        boolean known = !plugs(job).isEmpty();
        return new PlugsFromBench(
                job.name(), rows, known && wanted.isPositive() ? wanted : Quantity.ZERO);
    }

    private static Quantity onCore(String tag, JobState job) {
        return Holding.in(Account.core(tag), job.moves()).stream()
                .map(Holding::quantity)
                .reduce(Quantity.ZERO, Quantity::plus);
    }

    private static List<String> plugs(JobState job) {
        return job.pack().stream()
                .flatMap(pack -> pack.kits().stream())
                .flatMap(kit -> kit.contents().stream())
                .filter(line -> line.onCore() && applies(line, job))
                .flatMap(line -> Stream.concat(Stream.of(line.part()), line.replaces().stream()))
                .distinct()
                .toList();
    }

    private static boolean applies(KitLine line, JobState job) {
        return line.when().on(job.attributes()) != Condition.Holds.NO;
    }

    private static FactRow row(Handled core, String part, Quantity quantity) {
        return core.stamp()
                .row(FactKind.USES)
                .with("job", core.job().name())
                .with("part", part)
                .with("quantity", quantity.amount())
                .with("condition", Use.Condition.ON_CORE.word())
                .with("core", core.tag());
    }

    /** What to say where plugs came from nowhere. */
    Optional<String> remark() {
        return missing.isPositive()
                ? Optional.of(
                        missing
                                + " of its plugs did not lie on the bench of job "
                                + job
                                + "; if they came out of the store, issue them to the job")
                : Optional.empty();
    }
}
