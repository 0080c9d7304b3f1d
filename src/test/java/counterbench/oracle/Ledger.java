package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Balances by account and part, every move kept; and which kit's parts lie on which bench. */
final class Ledger {

    record Move(Instant at, String from, String to, String part, BigDecimal quantity) {}

    final List<Move> moves = new ArrayList<>();
    private final Map<String, Map<String, BigDecimal>> balances = new TreeMap<>();
    private final Map<String, Map<String, BigDecimal>> ofKit = new LinkedHashMap<>();

    /** Moves a quantity; kit says whose part it is, empty for loose goods. */
    void move(Instant at, String from, String to, String part, BigDecimal quantity, String kit) {
        if (quantity.signum() == 0) {
            return;
        }
        add(from, part, quantity.negate());
        add(to, part, quantity);
        if (!kit.isEmpty()) {
            ofKit(from, kit).merge(part, quantity.negate(), BigDecimal::add);
            ofKit(to, kit).merge(part, quantity, BigDecimal::add);
        }
        moves.add(new Move(at, from, to, part, quantity));
    }

    BigDecimal balance(String account, String part) {
        return held(account).getOrDefault(part, BigDecimal.ZERO);
    }

    /** All parts of an account that ever moved there. */
    Map<String, BigDecimal> held(String account) {
        return balances.getOrDefault(account, Map.of());
    }

    BigDecimal heldOfKit(String account, String kit, String part) {
        return ofKit(account, kit).getOrDefault(part, BigDecimal.ZERO);
    }

    Map<String, BigDecimal> heldOfKit(String account, String kit) {
        return Map.copyOf(ofKit(account, kit));
    }

    Set<String> accounts() {
        return balances.keySet();
    }

    private Map<String, BigDecimal> ofKit(String account, String kit) {
        return ofKit.computeIfAbsent(account + "\n" + kit, k -> new LinkedHashMap<>());
    }

    private void add(String account, String part, BigDecimal quantity) {
        balances.computeIfAbsent(account, a -> new TreeMap<>())
                .merge(part, quantity, BigDecimal::add);
    }
}
