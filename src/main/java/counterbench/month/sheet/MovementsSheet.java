package counterbench.month.sheet;

import counterbench.spool.SpooledRows;
import counterbench.stock.Account;
import counterbench.stock.LedgerFacts;
import counterbench.stock.Move;
import counterbench.stock.Source;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Every movement of goods of the month, in order of time. */
final class MovementsSheet {
    private final SiteMonth period;
    private final PartNames names;
    private final SpooledRows rows;

    MovementsSheet(SiteMonth period, PartNames names, SpooledRows rows) {
        this.period = period;
        this.names = names;
        this.rows = rows;
    }

    /** Adds those of the moves that belong to the month. */
    void add(Collection<Move> moves, LedgerFacts facts) {
        List<Move> ofMonth = moves.stream().filter(m -> period.books(m.at(), m.fact())).toList();
        if (!ofMonth.isEmpty()) {
            Doers doers = new Doers(facts);
            ofMonth.forEach(move -> add(move, doers));
        }
    }

    /** Adds a movement of a sealed month that was taken back since: it goes the other way. */
    void addTakenBack(Move move) {
        Move back =
                new Move(
                        move.at(),
                        move.fact(),
                        move.to(),
                        move.from(),
                        move.part(),
                        move.source(),
                        move.quantity());
        add(back, "taken back: " + Act.of(move), null);
    }

    private void add(Move move, Doers doers) {
        add(move, Act.of(move), doers.of(move.fact()));
    }

    private void add(Move move, String act, @Nullable String by) {
        rows.add(
                List.of(move.at(), move.fact().entry(), move.fact().line()),
                new RowOf()
                        .with("at", move.at())
                        .with("act", act)
                        .part(move.part(), names)
                        .with("quantity", move.quantity())
                        .with("from", move.from())
                        .with("to", move.to())
                        .with("kit", nameOf(move.source(), Source.Kind.KIT))
                        .with("lot", nameOf(move.source(), Source.Kind.LOT))
                        .with("job", job(move).orElse(null))
                        .with("by", by)
                        .with("entry", move.fact())
                        .values());
    }

    private static @Nullable String nameOf(Source source, Source.Kind kind) {
        return source.kind() == kind ? source.name() : null;
    }

    private static Optional<String> job(Move move) {
        return Stream.of(move.to(), move.from())
                .filter(a -> a.kind() == Account.Kind.BENCH || a.kind() == Account.Kind.VEHICLE)
                .map(Account::name)
                .findFirst();
    }
}
