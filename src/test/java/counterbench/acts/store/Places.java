package counterbench.acts.store;

import counterbench.acts.Transit;
import counterbench.acts.rack.BoardLine;
import counterbench.cores.Whereabouts.Place;
import counterbench.db.Store;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/** Every place in which a core stands, by the boards of all sites and by transit. */
record Places(Store store, List<Site> sites, Instant now) {
    static final String GONE = "gone";
    static final String ON_THE_WAY = "on the way to ";

    /** By owner and tag. */
    Map<String, String> all() {
        Map<String, List<String>> found = new TreeMap<>();
        for (Site owner : sites) {
            for (BoardLine line : new ReadRack(store, owner, now).undecided(List.of(), n -> {})) {
                boolean home = line.where().isIn(Place.IN_YARD, owner.site());
                if (home || line.where().isGone()) {
                    add(found, owner.site(), line.core(), home ? owner.site() : GONE);
                }
            }
        }
        new ReadCoresAway(store)
                .at(now).stream()
                        .filter(away -> !away.where().isOnTheWay())
                        .forEach(
                                away ->
                                        add(
                                                found,
                                                away.owner().site(),
                                                away.tag(),
                                                away.where().site()));
        for (Transit transit : new ReadTransit(store).all(now)) {
            add(
                    found,
                    Objects.requireNonNull(transit.owner()),
                    Objects.requireNonNull(transit.core()),
                    ON_THE_WAY + transit.to());
        }
        Map<String, String> places = new TreeMap<>();
        found.forEach((core, all) -> places.put(core, String.join(" and ", all)));
        return places;
    }

    private static void add(
            Map<String, List<String>> found, String owner, String tag, String place) {
        found.computeIfAbsent(owner + "/" + tag, core -> new ArrayList<>()).add(place);
    }
}
