package counterbench.acts.rack;

import counterbench.acts.Act;
import counterbench.acts.Decision;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.cores.CoreEvent;
import counterbench.cores.Whereabouts;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Takes cores in that were sent to a yard. It is recorded by the site whose cores they are; {@link
 * Incoming} finds out which that is.
 *
 * @param here the site in whose yard they arrive
 */
public record ArriveCores(List<String> tags, String here, Stamp stamp) implements Act {
    public ArriveCores {
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
        List<Problem> problems = new ArrayList<>();
        List<FactRow> rows = new ArrayList<>();
        for (String tag : tags) {
            Handled core = Handled.known(tag, situation, stamp);
            problem(core).ifPresent(problems::add);
            rows.add(core.row(CoreEvent.Kind.ARRIVED).with("other_site", here));
        }
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
        return new Decision(rows, List.of());
    }

    private Optional<Problem> problem(Handled core) {
        String asked = core.asked() + " of site " + core.site().site() + " at site " + here;
        if (!core.where().isIn(Whereabouts.Place.ON_THE_WAY, here)) {
            return Optional.of(
                    new Problem(
                            asked,
                            "it was not on the way here at that time",
                            "transit --longer-than 0 shows what is on the way"));
        }
        return core.history().events().stream()
                .filter(event -> event.otherSite() != null && event.at().isAfter(stamp.at()))
                .findFirst()
                .filter(next -> next.kind() == CoreEvent.Kind.ARRIVED)
                .map(
                        next ->
                                new Problem(
                                        asked,
                                        "it arrived at " + core.site().wallTime(next.at()),
                                        "nothing is left to do"));
    }
}
