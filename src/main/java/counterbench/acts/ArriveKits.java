package counterbench.acts;

import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.NearMatch;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Takes in kits that another site sent. */
public record ArriveKits(List<String> kits, String from, @Nullable String document, Stamp stamp)
        implements Act {
    public ArriveKits {
        kits = List.copyOf(kits);
    }

    @Override
    public FactKind makes() {
        return FactKind.MOVES;
    }

    @Override
    public Named named() {
        return Named.NOTHING.withKits(kits);
    }

    @Override
    public Decision decide(Situation situation) {
        Leaving.mustBeOther(situation, from);
        UnderWay underWay = situation.directory().underWay();
        List<Problem> problems = new ArrayList<>(NamedTwice.problems("kit", kits));
        new LinkedHashSet<>(kits)
                .forEach(kit -> problem(situation, underWay, kit).ifPresent(problems::add));
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
        return new Decision(kits.stream().map(this::row).toList(), List.of());
    }

    private FactRow row(String kit) {
        return stamp.row(FactKind.MOVES)
                .with("event", "arrived")
                .with("kit", kit)
                .with("other_site", from)
                .with("document", document);
    }

    private Optional<Problem> problem(Situation situation, UnderWay underWay, String kit) {
        String asked = "kit \"" + kit + "\" from site " + from;
        List<UnderWay.Sending> sent = underWay.ofKit(kit);
        if (sent.stream().anyMatch(s -> isFrom(s) && !s.at().isAfter(stamp.at()))) {
            return Optional.empty();
        }
        if (sent.stream().anyMatch(this::isFrom)) {
            return Optional.of(
                    new Problem(asked, "it was sent later", "say with --at when it arrived"));
        }
        return Optional.of(
                sent.stream()
                        .findFirst()
                        .map(UnderWay.Sending::otherSite)
                        .map(
                                other ->
                                        new Problem(
                                                asked,
                                                "site " + other + " sent it",
                                                "say --from " + other))
                        .orElseGet(() -> notSent(situation, underWay, kit, asked)));
    }

    private boolean isFrom(UnderWay.Sending sending) {
        return sending.otherSite().equals(from);
    }

    private Problem notSent(Situation situation, UnderWay underWay, String kit, String asked) {
        Optional<KitState> here = situation.findKit(kit);
        if (here.isPresent()) {
            return new Problem(
                    asked,
                    "this site had it already, and it " + here.get().whereabouts(),
                    "kit show " + kit + " tells its life");
        }
        return new Problem(
                asked,
                "no site of the store has sent it here",
                NearMatch.of(kit, underWay.kits())
                        .map(near -> "did you mean " + near + "?")
                        .orElse(
                                "have it sent there first (kit send); if it came from the supplier,"
                                        + " say kit receive"));
    }
}
