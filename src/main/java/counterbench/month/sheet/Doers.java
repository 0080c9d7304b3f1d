package counterbench.month.sheet;

import counterbench.shared.Address;
import counterbench.stock.LedgerFacts;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Who did what some facts say. */
final class Doers {
    private final Map<Address, String> byFact = new HashMap<>();

    Doers(LedgerFacts facts) {
        facts.kits().forEach(k -> put(k.kit().address(), k.kit().receiving().by()));
        facts.receipts().forEach(r -> put(r.address(), r.by()));
        facts.issues().forEach(i -> put(i.address(), i.by()));
        facts.uses().forEach(u -> put(u.address(), u.by()));
        facts.events().forEach(e -> put(e.address(), e.by()));
        facts.counts().forEach(c -> put(c.address(), c.by()));
    }

    private void put(Address fact, @Nullable String by) {
        if (by != null) {
            byFact.put(fact, by);
        }
    }

    @Nullable String of(Address fact) {
        return byFact.get(fact);
    }
}
