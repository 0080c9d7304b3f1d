package counterbench.acts.bench;

import counterbench.acts.Holding;
import counterbench.acts.JobState;
import counterbench.acts.KitState;
import counterbench.job.Requirement;
import counterbench.shared.Quantity;
import counterbench.shared.Refused;
import counterbench.stock.Source;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** So much of a part from one source on the bench: what came in kits before what came loose. */
record BenchPick(Source source, Quantity quantity) {
    @Nullable String kit() {
        return source.kind() == Source.Kind.KIT ? source.name() : null;
    }

    @Nullable String lot() {
        return source.kind() == Source.Kind.LOT ? source.name() : null;
    }

    /**
     * Where so much of a part is taken from.
     *
     * @throws Refused if the bench does not hold it, or it cannot be told which kit is meant
     */
    static List<BenchPick> of(Workplace place, Hardware hardware, Quantity amount) {
        if (hardware.kit() != null) {
            refuseUnlessIssued(place, hardware.kit());
        }
        List<Holding> there = there(place, hardware);
        if (hardware.kit() == null) {
            refuseUnlessOneSet(place, hardware.part(), there);
        }
        List<BenchPick> picks = new ArrayList<>();
        Quantity rest = amount;
        for (Holding holding : there) {
            Quantity taken = rest.min(holding.quantity());
            if (taken.isPositive()) {
                picks.add(new BenchPick(holding.source(), taken));
                rest = rest.minus(taken);
            }
        }
        if (rest.isPositive()) {
            throw notThere(place, hardware, amount.minus(rest));
        }
        return picks;
    }

    /** What can be taken at the time of the act, of the kit or lot that is said. */
    private static List<Holding> there(Workplace place, Hardware hardware) {
        JobState job = place.job();
        Instant at = place.stamp().at();
        List<Holding> all =
                job.benchHoldings().stream()
                        .filter(holding -> holding.part().equals(hardware.part()))
                        .map(holding -> free(job, holding, at))
                        .filter(holding -> holding.quantity().isPositive())
                        .sorted(order(hardware.labelLot()))
                        .toList();
        if (hardware.lot() != null) {
            refuseBehindKit(place, hardware.lot(), all);
        }
        return all.stream().filter(isMeant(hardware)).toList();
    }

    /** The book takes what a kit holds before what is loose; of that, the lot on the label. */
    private static Comparator<Holding> order(@Nullable String labelLot) {
        Source labelled = Source.lot(labelLot);
        return Comparator.<Holding, Boolean>comparing(
                        holding -> holding.source().kind() != Source.Kind.KIT)
                .thenComparing(holding -> !holding.source().equals(labelled));
    }

    private static Holding free(JobState job, Holding holding, Instant at) {
        return new Holding(
                holding.part(),
                holding.source(),
                job.freeOnBench(holding.part(), holding.source(), at));
    }

    private static Predicate<Holding> isMeant(Hardware hardware) {
        Optional<Source> said =
                Optional.ofNullable(hardware.kit())
                        .map(Source::kit)
                        .or(() -> Optional.ofNullable(hardware.lot()).map(Source::lot));
        return holding -> said.map(holding.source()::equals).orElse(true);
    }

    /** A use without a kit is taken from the kit that holds the part, whatever its lot. */
    private static void refuseBehindKit(Workplace place, String lot, List<Holding> all) {
        all.stream()
                .map(Holding::source)
                .filter(source -> source.kind() == Source.Kind.KIT)
                .findFirst()
                .ifPresent(
                        kit -> {
                            throw place.refused(
                                    "the one of "
                                            + kit
                                            + " lies on the bench, and goes before lot "
                                            + lot,
                                    "use that one, or put it back first: put-back "
                                            + place.job().name()
                                            + " --kit "
                                            + kit.name());
                        });
    }

    /** Parts that belong together must not be mixed by a guess. */
    private static void refuseUnlessOneSet(Workplace place, String part, List<Holding> there) {
        boolean matched =
                place.job()
                        .requirements()
                        .flatMap(requirements -> requirements.of(part))
                        .filter(Requirement::matched)
                        .isPresent();
        if (matched && there.size() > 1) {
            String sources =
                    there.stream()
                            .map(holding -> holding.source().toString())
                            .collect(Collectors.joining(" and "));
            throw place.refused(
                    "it belongs to the other parts of its kit, and the bench has it from "
                            + sources,
                    "say which with --kit; at the bench, scan the kit first");
        }
    }

    private static void refuseUnlessIssued(Workplace place, String kit) {
        if (place.job().kits().contains(kit)) {
            return;
        }
        KitState state = place.situation().kit(kit);
        String todo =
                state.job()
                        .filter(holder -> !holder.equals(place.job().name()))
                        .map(holder -> "put it back there first, or scan another")
                        .orElse(
                                "name a kit of this job, or issue it first: kit issue "
                                        + kit
                                        + " "
                                        + place.job().name());
        throw place.refused("kit " + kit + " " + state.whereabouts(), todo);
    }

    private static Refused notThere(Workplace place, Hardware hardware, Quantity found) {
        String from = hardware.kit() == null ? "" : " of kit " + hardware.kit();
        String job = place.job().name();
        return place.refused(
                found.isPositive()
                        ? "the bench holds only " + found + " of it" + from
                        : "the bench holds none of it" + from,
                place.asked().startsWith("fit")
                        ? "issue it first (kit issue --job "
                                + job
                                + ", or part issue); an old one that goes on again is a refit"
                        : "job show " + job + " says what lies on it");
    }
}
