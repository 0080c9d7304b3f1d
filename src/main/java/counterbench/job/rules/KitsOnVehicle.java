package counterbench.job.rules;

import counterbench.shared.Quantity;
import counterbench.stock.Use;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Which kits the new hardware on the vehicle came from. What was taken off again goes from what its
 * own kit gave; where the rows cannot tell, or that kit gave too little, from what was fitted
 * earliest.
 */
final class KitsOnVehicle {
    private final HardwareFacts facts;
    private final Map<String, List<Fitted>> fitted = new HashMap<>();

    KitsOnVehicle(HardwareFacts facts) {
        this.facts = facts;
        Instant until = facts.judged().until();
        List<Use> uses = facts.goods().uses().stream().filter(u -> !u.at().isAfter(until)).toList();
        uses.stream().filter(u -> u.condition() == Use.Condition.NEW).forEach(this::fit);
        uses.stream()
                .filter(u -> u.condition() == Use.Condition.TAKEN_OFF)
                .filter(u -> u.was() == Use.Condition.NEW)
                .forEach(this::takeOff);
    }

    /** The serials of the kits that gave what is there of a part, sorted; empty text for no kit. */
    SortedSet<String> kitsOf(String part) {
        SortedSet<String> kits = new TreeSet<>();
        fitted.getOrDefault(part, List.of()).stream()
                .filter(f -> f.left().isPositive())
                .forEach(f -> kits.add(f.kit()));
        return kits;
    }

    private void fit(Use use) {
        of(use).add(new Fitted(facts.source().kitOf(use).orElse(""), use.quantity()));
    }

    private void takeOff(Use use) {
        List<Fitted> there = of(use);
        String kit = facts.source().kitOf(use).orElse("");
        Quantity rest = takeOff(there, f -> !kit.isEmpty() && f.kit().equals(kit), use.quantity());
        takeOff(there, f -> true, rest);
    }

    /** Takes off what was fitted earliest of those that qualify; returns what is still to go. */
    private static Quantity takeOff(List<Fitted> there, Predicate<Fitted> which, Quantity off) {
        Quantity rest = off;
        for (int i = 0; i < there.size(); i++) {
            Fitted one = there.get(i);
            if (which.test(one)) {
                Quantity now = rest.min(one.left());
                there.set(i, one.without(now));
                rest = rest.minus(now);
            }
        }
        return rest;
    }

    private List<Fitted> of(Use use) {
        String part = facts.requirements().packPart(use.part());
        return fitted.computeIfAbsent(part, p -> new ArrayList<>());
    }
}
