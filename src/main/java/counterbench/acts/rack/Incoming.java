package counterbench.acts.rack;

import counterbench.acts.CoreAway;
import counterbench.acts.NamedTwice;
import counterbench.cores.Whereabouts;
import counterbench.cores.Whereabouts.Place;
import counterbench.shared.NearMatch;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Finds out whose cores those are that arrive in a yard: the tag tells, unless two sites have a
 * core of that tag on the way there.
 *
 * @param here the site in whose yard they arrive
 * @param then the cores of those tags where they were at the time of the arrival, of all sites
 * @param latest the same by all that is known
 * @param away all cores that are away from their own yard; asked only where a tag is not known
 */
public record Incoming(
        Site here,
        List<CoreAway> then,
        List<CoreAway> latest,
        Supplier<? extends Collection<CoreAway>> away) {
    public Incoming {
        then = List.copyOf(then);
        latest = List.copyOf(latest);
    }

    /**
     * The tags by the site whose cores they are, in the order of the line.
     *
     * @param of whose core each is, where the line says so
     * @param from the site that sent them, where the line says so
     * @throws Refused if one is not on the way here, or it cannot be told whose it is
     */
    public Map<Site, List<String>> byOwner(
            List<String> tags, @Nullable String of, @Nullable String from) {
        List<Problem> problems = new ArrayList<>(NamedTwice.problems("core", tags));
        Map<Site, List<String>> byOwner = new LinkedHashMap<>();
        for (String tag : tags) {
            List<CoreAway> found =
                    coming(then, tag).stream()
                            .filter(away -> of == null || of.equals(away.owner().site()))
                            .filter(away -> from == null || from.equals(away.where().from()))
                            .toList();
            if (found.size() == 1) {
                byOwner.computeIfAbsent(found.get(0).owner(), site -> new ArrayList<>()).add(tag);
            } else {
                problems.add(found.isEmpty() ? none(tag) : several(tag, found));
            }
        }
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
        return byOwner;
    }

    private List<CoreAway> coming(Collection<CoreAway> away, String tag) {
        return away.stream()
                .filter(core -> core.tag().equals(tag))
                .filter(core -> core.where().isIn(Place.ON_THE_WAY, here.site()))
                .toList();
    }

    private static Problem several(String tag, List<CoreAway> found) {
        List<String> owners = found.stream().map(away -> away.owner().site()).toList();
        return new Problem(
                "core \"" + tag + "\"",
                "cores of "
                        + String.join(" and ", owners)
                        + " bear that tag, and each is on the way here",
                "say whose it is: "
                        + owners.stream()
                                .map(owner -> "--of " + owner)
                                .collect(Collectors.joining(" or ")));
    }

    private Problem none(String tag) {
        String asked = "core \"" + tag + "\"";
        List<CoreAway> otherwise = coming(then, tag);
        if (!otherwise.isEmpty()) {
            CoreAway away = otherwise.get(0);
            return new Problem(
                    asked,
                    "it is a core of site " + away.owner().site() + ", and " + sent(away.where()),
                    "say --of "
                            + away.owner().site()
                            + " --from "
                            + away.where().from()
                            + ", or leave both out");
        }
        return coming(latest, tag).stream()
                .findFirst()
                .map(
                        away ->
                                new Problem(
                                        asked,
                                        "it was sent later, at "
                                                + here.wallTime(away.where().since()),
                                        "say with --at when it arrived"))
                .or(() -> elsewhere(tag).map(away -> elsewhere(asked, away)))
                .orElseGet(() -> notSent(asked, tag));
    }

    private static String sent(Whereabouts where) {
        return "site " + where.from() + " sent it";
    }

    private Optional<CoreAway> elsewhere(String tag) {
        return latest.stream()
                .filter(core -> core.tag().equals(tag))
                .min(Comparator.comparing(core -> !core.isStrangeTo(here)));
    }

    private Problem elsewhere(String asked, CoreAway away) {
        Whereabouts where = away.where();
        String since = " since " + here.wallTime(where.since());
        if (where.isGone()) {
            return new Problem(
                    asked,
                    "it left for the return centre at " + here.wallTime(where.since()),
                    "if they sent it back, have its site send it here: " + sendHere(away));
        }
        if (where.isIn(Place.IN_YARD, here.site())) {
            return new Problem(asked, "it lies here" + since, "nothing is left to do");
        }
        return where.isOnTheWay()
                ? new Problem(
                        asked,
                        "it is on the way to " + where.site() + since,
                        "if it came here instead, take it in there and have it sent here: core"
                                + " arrive "
                                + away.tag()
                                + " --site "
                                + where.site()
                                + ", "
                                + sendHere(away))
                : new Problem(
                        asked,
                        "it lies at " + where.site() + since,
                        "have it sent here first: " + sendHere(away));
    }

    private String sendHere(CoreAway away) {
        return "core send "
                + away.tag()
                + " --to "
                + here.site()
                + " --site "
                + away.owner().site();
    }

    private Problem notSent(String asked, String tag) {
        TreeSet<String> tags =
                away.get().stream()
                        .filter(core -> core.where().isIn(Place.ON_THE_WAY, here.site()))
                        .map(CoreAway::tag)
                        .collect(Collectors.toCollection(TreeSet::new));
        return new Problem(
                asked,
                "no site of the store has sent it here",
                NearMatch.of(tag, tags)
                        .map(near -> "did you mean " + near + "?")
                        .orElse("have the site whose core it is send it first: core send " + tag));
    }
}
