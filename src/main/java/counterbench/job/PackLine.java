package counterbench.job;

import counterbench.campaign.Condition.Holds;
import counterbench.campaign.KitLine;
import counterbench.campaign.KitTerms;
import counterbench.shared.Quantity;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/** A line of one of a pack's kits, judged on one vehicle. */
record PackLine(KitTerms kit, KitLine line, Holds holds) {
    static PackLine of(KitTerms kit, KitLine line, Map<String, String> attributes) {
        return new PackLine(kit, line, both(kit.when().on(attributes), line.when().on(attributes)));
    }

    /** How much a job needs by this line, where it applies. */
    Quantity required() {
        return line.quantity().times(kit.quantity());
    }

    /** The least that will do by this line, where it applies. */
    Quantity atLeast() {
        return line.atLeast().times(kit.quantity());
    }

    boolean isOnVehicle() {
        return !line.onCore();
    }

    /** The attributes that its conditions ask for and the vehicle lacks. */
    SortedSet<String> lacking(Map<String, String> attributes) {
        SortedSet<String> asked = new TreeSet<>(kit.when().answers().keySet());
        asked.addAll(line.when().answers().keySet());
        asked.removeAll(attributes.keySet());
        return asked;
    }

    private static Holds both(Holds kit, Holds line) {
        if (kit == Holds.NO || line == Holds.NO) {
            return Holds.NO;
        }
        return kit == Holds.YES ? line : kit;
    }
}
