package counterbench.acts;

import counterbench.campaign.Condition.Holds;
import counterbench.campaign.KitTerms;
import counterbench.campaign.Pack;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Says which kits a job still needs, and which one of them to take next. */
public final class NextKit {
    private final Situation situation;
    private final JobState job;

    public NextKit(Situation situation, JobState job) {
        this.situation = situation;
        this.job = job;
    }

    /** How many kits of each part the job still needs, in the order of parts. */
    public Map<String, Integer> wanted() {
        Map<String, Integer> wanted = new TreeMap<>();
        for (KitTerms kit : terms(Holds.YES)) {
            wanted.merge(kit.part(), kit.quantity(), Integer::sum);
        }
        for (String serial : job.kits()) {
            situation
                    .findKit(serial)
                    .filter(kit -> !kit.isOnShelf())
                    .map(kit -> kit.received().kit().kitPart())
                    .ifPresent(part -> wanted.computeIfPresent(part, (p, n) -> n - 1));
        }
        wanted.values().removeIf(count -> count <= 0);
        return wanted;
    }

    private List<KitTerms> terms(Holds holds) {
        return job.pack().map(Pack::kits).orElse(List.of()).stream()
                .filter(kit -> kit.when().on(job.attributes()) == holds)
                .toList();
    }

    /**
     * The kit that expires first of those in date on the shelf.
     *
     * @param kitPart the part that is meant; empty for the one that the job needs
     * @throws Refused if the job needs none, it cannot be told which, or none is there
     */
    public KitListing propose(Optional<String> kitPart) {
        String part = kitPart.orElseGet(this::wantedPart);
        List<KitListing> there = situation.directory().kitsOnShelf(part);
        return there.stream()
                .filter(kit -> !kit.isExpired(situation.today()))
                .findFirst()
                .orElseThrow(() -> none(part, there));
    }

    private String wantedPart() {
        return wanted().keySet().stream().findFirst().orElseThrow(this::needsNone);
    }

    private Refused needsNone() {
        String asked = "a kit for job " + job.name();
        if (!terms(Holds.UNKNOWN).isEmpty()) {
            return new Refused(
                    asked,
                    "it cannot be told which one, as the list of vehicles does not say enough of"
                            + " the vehicle",
                    "name the kit, or its part with --part");
        }
        return new Refused(
                asked,
                "the job has all the kits that its campaign asks for",
                "if it needs another, name the kit, or its part with --part");
    }

    private Refused none(String part, List<KitListing> expired) {
        String asked = "a kit " + part + " for job " + job.name();
        List<String> parts = terms(Holds.YES).stream().map(KitTerms::part).toList();
        if (!expired.isEmpty()) {
            return new Refused(
                    asked,
                    "those on the shelf are expired, such as " + expired.get(0).words(),
                    "name one if it must be; need " + job.job().campaign() + " shows what comes");
        }
        return new Refused(
                asked,
                "none is on the shelf",
                NearMatch.of(part, parts)
                        .filter(near -> !near.equals(part))
                        .map(near -> "did you mean " + near + "?")
                        .orElse("need " + job.job().campaign() + " shows what is on order"));
    }
}
