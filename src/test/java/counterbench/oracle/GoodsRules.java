package counterbench.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Rules about accounts and kits as such. */
final class GoodsRules {

    private final World world;
    private final Bookkeeper books;
    private final List<Finding> found = new ArrayList<>();

    GoodsRules(World world, Bookkeeper books) {
        this.world = world;
        this.books = books;
    }

    List<Finding> judge() {
        books.belowZero.forEach(
                (noted, at) ->
                        account("balance-negative", noted, world.clock.month(at).toString()));
        books.differences.forEach(
                (noted, at) ->
                        account("count-difference", noted, world.clock.month(at).toString()));
        for (Facts.Kit kit : world.facts.kits.values()) {
            String month = world.clock.month(kit.at()).toString();
            kit.missing().forEach((part, q) -> incomplete(kit, part, month, q.toPlainString()));
        }
        unknown().forEach(k -> found.add(kit("kit-unknown", k, "", "", "")));
        return found;
    }

    /** Kits that moves and counts name and that never came. */
    private Set<String> unknown() {
        Set<String> named = new TreeSet<>();
        world.facts.movements.forEach(m -> named.add(m.kit()));
        world.facts.counts.forEach(c -> named.add(c.kit()));
        named.removeAll(world.received);
        named.remove("");
        return named;
    }

    private void incomplete(Facts.Kit kit, String part, String month, String why) {
        found.add(kit("kit-incomplete", kit.kit(), part, month, why));
    }

    private Finding kit(String rule, String kit, String part, String month, String why) {
        return world.finding(rule, "", "kit", kit, part, "", month, why);
    }

    private void account(String rule, Bookkeeper.Noted noted, String month) {
        found.add(world.finding(rule, "", "account", noted.account(), noted.part(), "", month, ""));
    }
}
