package counterbench.oracle;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What one part did in a month: the net change of every kind of account. */
final class Flow {

    private final Map<String, BigDecimal> net = new LinkedHashMap<>();
    private BigDecimal opening = BigDecimal.ZERO;
    private BigDecimal transferredIn = BigDecimal.ZERO;
    private BigDecimal transferredOut = BigDecimal.ZERO;

    void before(Ledger.Move move) {
        opening = opening.add(inside(move.to(), move)).subtract(inside(move.from(), move));
    }

    void during(Ledger.Move move) {
        net.merge(kind(move.to()), move.quantity(), BigDecimal::add);
        net.merge(kind(move.from()), move.quantity().negate(), BigDecimal::add);
        if (kind(move.from()).equals("TRANSIT")) {
            transferredIn = transferredIn.add(move.quantity());
        }
        if (kind(move.to()).equals("TRANSIT")) {
            transferredOut = transferredOut.add(move.quantity());
        }
    }

    GoodsRow row(String part, Optional<BigDecimal> counted) {
        BigDecimal closing = opening.add(net("KIT")).add(net("STORE")).add(net("BENCH"));
        BigDecimal sum =
                opening.subtract(net("SUPPLIER"))
                        .add(transferredIn)
                        .subtract(transferredOut)
                        .subtract(net("VEHICLE"))
                        .subtract(net("CORE"))
                        .subtract(net("SCRAP"))
                        .subtract(net("RETURNED"))
                        .subtract(net("COUNT"));
        return new GoodsRow(
                part,
                opening,
                net("SUPPLIER").negate(),
                transferredIn,
                transferredOut,
                net("VEHICLE"),
                net("CORE"),
                net("SCRAP"),
                net("RETURNED"),
                net("COUNT").negate(),
                closing,
                counted,
                closing.subtract(sum));
    }

    private BigDecimal net(String kind) {
        return net.getOrDefault(kind, BigDecimal.ZERO);
    }

    private static BigDecimal inside(String account, Ledger.Move move) {
        String kind = kind(account);
        boolean here = kind.equals("KIT") || kind.equals("STORE") || kind.equals("BENCH");
        return here ? move.quantity() : BigDecimal.ZERO;
    }

    private static String kind(String account) {
        return account.replaceFirst("\\(.*", "");
    }
}
