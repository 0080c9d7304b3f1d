package counterbench.oracle;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Deals every fault about equally often, each to a job whose campaign can have it. */
final class FaultDeck {

    private static final int COPIES = 3;

    private final List<Fault> waiting = new ArrayList<>();
    private final Dice dice;

    FaultDeck(Dice dice) {
        this.dice = dice;
    }

    Optional<Fault> deal(Set<String> features) {
        if (waiting.size() < Fault.values().length) {
            refill();
        }
        Iterator<Fault> faults = waiting.iterator();
        while (faults.hasNext()) {
            Fault fault = faults.next();
            if (fault.fits(features)) {
                faults.remove();
                return Optional.of(fault);
            }
        }
        return Optional.empty();
    }

    private void refill() {
        List<Fault> fresh = new ArrayList<>(List.of(Fault.values()));
        fresh.removeIf(f -> Collections.frequency(waiting, f) >= COPIES);
        Collections.shuffle(fresh, dice.random());
        waiting.addAll(fresh);
    }
}
