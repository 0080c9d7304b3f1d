package counterbench.oracle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rules about the vehicles of completed jobs. */
final class VehicleRules {

    private final World world;
    private final List<Finding> found = new ArrayList<>();

    VehicleRules(World world) {
        this.world = world;
    }

    List<Finding> judge() {
        Map<String, List<Facts.Job>> done = new LinkedHashMap<>();
        world.facts.jobs.values().stream()
                .filter(Facts.Job::completed)
                .sorted(
                        Comparator.comparing((Facts.Job j) -> j.endedAt().orElseThrow())
                                .thenComparing(Facts.Job::job))
                .forEach(job -> judge(job, done));
        return found;
    }

    private void judge(Facts.Job job, Map<String, List<Facts.Job>> done) {
        Pack pack = world.terms(job);
        Map<String, String> vehicle = world.attributes(job);
        if (pack.whens().stream().anyMatch(w -> w.holds(vehicle) == When.Applies.UNKNOWN)) {
            add("condition-unknown", job, vehicle.toString());
        }
        if (!Vin.valid(job.vin(), pack.checkDigit())) {
            add("vin-invalid", job, job.vin());
        }
        Map<String, Map<String, String>> list = world.facts.vehicles.get(job.campaign());
        if (list != null && !list.containsKey(job.vin())) {
            add("vehicle-not-listed", job, job.vin());
        }
        List<Facts.Job> earlier =
                done.computeIfAbsent(job.campaign() + "|" + job.vin(), k -> new ArrayList<>());
        if (earlier.stream().anyMatch(e -> !e.job().equals(job.redoOf()))) {
            add("vehicle-done-twice", job, earlier.toString());
        }
        earlier.add(job);
    }

    private void add(String rule, Facts.Job job, String why) {
        found.add(world.ofJob(rule, job, "", "", why));
    }
}
