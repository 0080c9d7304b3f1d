package counterbench.month;

import counterbench.job.Requirement;
import counterbench.job.rules.HardwareFacts;
import counterbench.job.rules.HardwareOver;
import counterbench.job.rules.HardwareShort;
import counterbench.job.rules.LeftOnBench;
import counterbench.job.rules.ReusedHardware;
import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.shared.Quantity;
import counterbench.stock.Account;
import counterbench.stock.Move;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What a completed job required, used and still has, part by part.
 *
 * <p>The job is one to look at for a part where the review says so: where a single-use part was
 * refitted, less or more is on the vehicle than required, or its bench is not clear.
 */
public final class PartsOnJob {
    private static final List<Judge<HardwareFacts>> TELLING =
            List.of(
                    new ReusedHardware(),
                    new HardwareShort(),
                    new HardwareOver(),
                    new LeftOnBench());

    private final HardwareFacts facts;
    private final Map<String, Quantity> scrapped = new TreeMap<>();
    private final Map<String, Quantity> left = new TreeMap<>();
    private final Set<String> amiss = new HashSet<>();

    private PartsOnJob(HardwareFacts facts, Collection<Move> moves) {
        this.facts = facts;
        moves.forEach(this::addScrap);
        facts.goods().bench().forEach((part, q) -> left.merge(packPart(part), q, Quantity::plus));
        addAmiss();
    }

    /**
     * The parts of one completed job, by part number; older numbers count as the pack's part.
     *
     * @param facts what the hardware rules judge of the job
     * @param moves those of its component, or at least those that touch its bench and vehicle
     */
    public static List<PartOnJob> of(HardwareFacts facts, Collection<Move> moves) {
        return new PartsOnJob(facts, moves).parts();
    }

    private String packPart(String part) {
        return facts.requirements().packPart(part);
    }

    private void addScrap(Move move) {
        String job = facts.judged().job().job();
        boolean ofJob =
                move.from().equals(Account.bench(job)) || move.from().equals(Account.vehicle(job));
        if (ofJob && move.to().equals(Account.SCRAP)) {
            scrapped.merge(packPart(move.part()), move.quantity(), Quantity::plus);
        }
    }

    private void addAmiss() {
        Findings findings = new Findings();
        TELLING.forEach(judge -> judge.judge(facts, findings));
        for (Finding finding : findings.found()) {
            String part = finding.subject().part();
            if (part != null) {
                amiss.add(packPart(part));
            }
        }
    }

    private List<PartOnJob> parts() {
        Set<String> parts = new TreeSet<>(facts.onVehicle().parts());
        facts.requirements().all().forEach(r -> parts.add(r.part()));
        parts.addAll(scrapped.keySet());
        parts.addAll(left.keySet());
        return parts.stream().map(this::part).toList();
    }

    private PartOnJob part(String part) {
        return new PartOnJob(
                part,
                facts.requirements().of(part).map(Requirement::required).orElse(Quantity.ZERO),
                facts.onVehicle().fittedNew(part),
                facts.onVehicle().refittedOld(part),
                scrapped.getOrDefault(part, Quantity.ZERO),
                left.getOrDefault(part, Quantity.ZERO),
                amiss.contains(part));
    }
}
