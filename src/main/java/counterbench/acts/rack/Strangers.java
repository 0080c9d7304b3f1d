package counterbench.acts.rack;

import counterbench.acts.CoreAway;
import counterbench.cores.CoreStatus;
import counterbench.cores.Whereabouts.Place;
import counterbench.shared.Site;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Cores of other sites that lie in a site's yard, or are on the way there.
 *
 * @param here the site
 * @param away cores that are not in the yard of their own site
 */
public record Strangers(Site here, List<CoreAway> away) {
    public Strangers {
        Objects.requireNonNull(here, "here");
        away = List.copyOf(away);
    }

    /** What people are told of them, a line for those that lie here and one for those that come. */
    public List<String> told() {
        return Stream.of(
                        line(
                                "cores of other sites in this yard: ",
                                in(Place.IN_YARD),
                                Strangers::state,
                                "; work on them with --site of theirs"),
                        line(
                                "cores of other sites on the way here: ",
                                in(Place.ON_THE_WAY),
                                this::sent,
                                "; core arrive takes them in"))
                .filter(line -> !line.isEmpty())
                .toList();
    }

    private List<CoreAway> in(Place place) {
        return away.stream()
                .filter(core -> core.isStrangeTo(here))
                .filter(core -> core.where().isIn(place, here.site()))
                .sorted(CoreAway.BY_TAG)
                .toList();
    }

    private static String line(
            String begin,
            Collection<CoreAway> cores,
            Function<CoreAway, String> words,
            String end) {
        return cores.isEmpty()
                ? ""
                : cores.stream().map(words).collect(Collectors.joining(", ", begin, end));
    }

    private static String state(CoreAway core) {
        return core.tag()
                + " of "
                + core.owner().site()
                + " ("
                + CoreStatus.of(core.core().core(), null).state().word()
                + ")";
    }

    private String sent(CoreAway core) {
        return core.tag()
                + " of "
                + core.owner().site()
                + " (from "
                + core.where().from()
                + " since "
                + here.wallTime(core.where().since())
                + ")";
    }
}
