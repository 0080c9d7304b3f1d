package counterbench.acts.rack;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.NamedTwice;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.cores.Answer;
import counterbench.cores.CoreEvent;
import counterbench.cores.Placement;
import counterbench.cores.Whereabouts;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.NearMatch;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Sends cores to the yard of another site of the store, or back home. Their book stays with the
 * site that removed them, and the day to ship by does not wait.
 *
 * @param to the site that they go to
 */
public record SendCores(List<String> tags, String to, Stamp stamp) implements Act {
    private static final String CAUTION =
            "Rules for fuel-wetted parts hold on the road between two yards as well, and are the"
                    + " shipper's to check; a logged drain is no permission.";

    public SendCores {
        tags = List.copyOf(tags);
    }

    @Override
    public FactKind makes() {
        return FactKind.CORES;
    }

    @Override
    public Named named() {
        return Named.NOTHING.withCores(tags);
    }

    @Override
    public Decision decide(Situation situation) {
        mustBeSite(situation);
        List<Problem> problems = new ArrayList<>(NamedTwice.problems("core", tags));
        List<FactRow> rows = new ArrayList<>();
        List<String> remarks = new ArrayList<>();
        for (String tag : new TreeSet<>(tags)) {
            try {
                Handled core = Handled.of(tag, situation, stamp);
                refuse(core);
                rows.add(core.row(CoreEvent.Kind.SENT).with("other_site", to));
                open(core).ifPresent(remarks::add);
            } catch (Refused e) {
                problems.addAll(e.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
        remarks.add(CAUTION);
        return new Decision(rows, remarks);
    }

    private void mustBeSite(Situation situation) {
        Set<String> sites = new TreeSet<>(situation.directory().otherSites());
        sites.add(situation.site().site());
        if (!sites.contains(to)) {
            throw new Refused(
                    "site \"" + to + "\"",
                    "the store has no such site",
                    NearMatch.of(to, sites)
                            .map(near -> "did you mean " + near + "?")
                            .orElse("there are " + String.join(", ", sites)));
        }
    }

    private void refuse(Handled core) {
        String asked = core.asked() + " to site " + to;
        Whereabouts where = core.where();
        if (where.isIn(Whereabouts.Place.IN_YARD, to)) {
            throw new Refused(asked, "it lies there already", "nothing is left to do");
        }
        core.history()
                .openPlacement()
                .map(Placement::shipment)
                .ifPresent(
                        on -> {
                            throw new Refused(
                                    asked,
                                    "it is on shipment " + on,
                                    "take it off there first: shipment take-off "
                                            + on
                                            + " "
                                            + core.tag());
                        });
        refuseWhatTheyHave(core, asked);
        refuseWhileDraining(core, asked);
        core.refuseBeforeLastAct("sent");
    }

    /** The return centre may have answered though nobody wrote down that it was shipped. */
    private static void refuseWhatTheyHave(Handled core, String asked) {
        List<Answer> answers = core.history().answers();
        Optional<Answer> said =
                core.history().verdict().or(() -> answers.stream().reduce((a, b) -> b));
        said.filter(answer -> answer.kind() != CoreEvent.Kind.REJECTED)
                .ifPresent(
                        answer -> {
                            throw new Refused(
                                    asked,
                                    "the return centre "
                                            + answer.kind().word()
                                            + " it at "
                                            + core.site().wallTime(answer.at()),
                                    "if that was another core, reverse it (journal show)");
                        });
    }

    /** What runs out on the road drains nowhere; nor does a period that goes on there count. */
    private void refuseWhileDraining(Handled core, String asked) {
        core.history()
                .drainOpenAt(stamp.at())
                .ifPresent(
                        since -> {
                            throw new Refused(
                                    asked,
                                    "it drains since " + core.site().wallTime(since),
                                    "end that first, with --at if it is over: drain end "
                                            + core.tag()
                                            + "; close it and keep it upright before it travels");
                        });
    }

    private Optional<String> open(Handled core) {
        int in = core.history().plugsAt(stamp.at());
        return core.terms()
                .filter(terms -> in < terms.plugs())
                .map(
                        terms ->
                                "core "
                                        + core.tag()
                                        + " stands open: "
                                        + in
                                        + " of "
                                        + terms.plugs()
                                        + " plugs are in it; fuel that is left runs out on the way");
    }
}
