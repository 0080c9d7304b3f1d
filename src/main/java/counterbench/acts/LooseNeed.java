package counterbench.acts;

import counterbench.campaign.KitTerms;
import counterbench.campaign.Pack;
import counterbench.job.OnVehicle;
import counterbench.job.Requirement;
import counterbench.job.Requirements;
import counterbench.shared.Quantity;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;

/** What an open job lacks besides the kits that it will still get, so that it needs it loose. */
public final class LooseNeed {
    private final JobState job;
    private final Requirements required;
    private final Map<String, Quantity> coming;

    private LooseNeed(JobState job, Requirements required, Map<String, Quantity> coming) {
        this.job = job;
        this.required = required;
        this.coming = coming;
    }

    /**
     * So much of each part; of parts for which it cannot be told, nothing.
     *
     * @param kits how many kits of each part it will still get
     */
    public static Map<String, Quantity> of(JobState job, Map<String, Integer> kits, Instant now) {
        Map<String, Quantity> need = new TreeMap<>();
        job.requirements()
                .map(required -> new LooseNeed(job, required, coming(required, kits)))
                .ifPresent(known -> known.addTo(need, now));
        return need;
    }

    private static Map<String, Quantity> coming(Requirements required, Map<String, Integer> kits) {
        Pack pack = required.pack();
        Map<String, Quantity> coming = new TreeMap<>();
        kits.forEach(
                (part, count) ->
                        pack.kit(part).map(KitTerms::contents).stream()
                                .flatMap(lines -> lines.stream())
                                .forEach(
                                        line ->
                                                coming.merge(
                                                        required.packPart(line.part()),
                                                        line.quantity().times(count),
                                                        Quantity::plus)));
        return coming;
    }

    private void addTo(Map<String, Quantity> need, Instant now) {
        OnVehicle fitted = OnVehicle.at(now, job.file().uses(), required::packPart);
        for (Requirement part : required.onVehicle()) {
            Quantity lacking =
                    part.least()
                            .minus(fitted.total(part.part()))
                            .minus(onBench(part.part()))
                            .minus(coming.getOrDefault(part.part(), Quantity.ZERO));
            if (part.applies() && lacking.isPositive()) {
                need.put(part.part(), lacking);
            }
        }
    }

    private Quantity onBench(String packPart) {
        return job.onBench().entrySet().stream()
                .filter(held -> required.packPart(held.getKey()).equals(packPart))
                .map(Map.Entry::getValue)
                .reduce(Quantity.ZERO, Quantity::plus);
    }
}
