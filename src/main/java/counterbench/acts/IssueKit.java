package counterbench.acts;

import counterbench.campaign.KitTerms;
import counterbench.facts.FactKind;
import counterbench.shared.Refused;
import counterbench.stock.Kit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Hands a kit to a job: all that it still holds goes onto the job's bench. */
public record IssueKit(String kit, String job, Stamp stamp) implements Act {
    @Override
    public FactKind makes() {
        return FactKind.ISSUES;
    }

    @Override
    public Named named() {
        return Named.job(job).withKit(kit);
    }

    @Override
    public Decision decide(Situation situation) {
        JobState to = situation.job(job);
        KitState given = situation.kit(kit);
        String asked = "kit \"" + kit + "\" to job " + job;
        to.mustBeOpen(asked);
        refuseUnlessOnShelf(given, asked);
        return new Decision(
                List.of(stamp.row(FactKind.ISSUES).with("job", job).with("kit", kit)),
                remarks(situation, to, given));
    }

    private void refuseUnlessOnShelf(KitState given, String asked) {
        if (given.received().kit().receivedAt().isAfter(stamp.at())) {
            throw new Refused(
                    asked,
                    "it was received later, at " + given.received().kit().receivedAt(),
                    "say when it was issued with --at");
        }
        if (!given.isOnShelf()) {
            throw new Refused(asked, "the kit " + given.whereabouts(), wayOut(given));
        }
        if (!given.isFree(stamp.at())) {
            throw new Refused(
                    asked,
                    "the kit was not on the shelf at that time",
                    "say when it was issued with --at");
        }
    }

    private String wayOut(KitState given) {
        return given.job()
                .filter(holder -> !holder.equals(job))
                .map(holder -> "put it back there first (put-back), or take another kit")
                .orElse("take another kit; kit list shows those on the shelf");
    }

    private List<String> remarks(Situation situation, JobState to, KitState given) {
        List<String> remarks = new ArrayList<>();
        if (given.isExpired(situation.site().dayOf(stamp.at()))) {
            remarks.add(
                    "kit "
                            + kit
                            + " is past its last usable day, "
                            + given.received().kit().expiresOn());
        }
        shortOf(given).ifPresent(remarks::add);
        String kitPart = given.received().kit().kitPart();
        sooner(situation, given.received().kit()).ifPresent(remarks::add);
        Optional<KitTerms> wanted = to.pack().flatMap(pack -> pack.kit(kitPart));
        if (to.pack().isPresent() && wanted.isEmpty()) {
            remarks.add(
                    "campaign " + to.job().campaign() + " asks for no kit of the part " + kitPart);
        }
        return remarks;
    }

    /** So that nobody looks for what never came, and the rest is issued loose in time. */
    private Optional<String> shortOf(KitState given) {
        String lacking =
                given.lacking().entrySet().stream()
                        .filter(lack -> lack.getValue().isPositive())
                        .map(lack -> lack.getValue() + " " + lack.getKey())
                        .collect(Collectors.joining(", "));
        return lacking.isEmpty()
                ? Optional.empty()
                : Optional.of("kit " + kit + " is short of " + lacking);
    }

    private Optional<String> sooner(Situation situation, Kit given) {
        LocalDate day = situation.site().dayOf(stamp.at());
        return situation.directory().kitsOnShelf(given.kitPart()).stream()
                .filter(other -> !other.isExpired(day) && other.expiresBefore(given))
                .findFirst()
                .map(other -> other.words() + " expires sooner and is on the shelf");
    }
}
