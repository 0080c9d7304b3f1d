package counterbench.shell.counter;

import counterbench.acts.Parts;
import counterbench.acts.store.RecordAct;
import counterbench.facts.FactRow;
import counterbench.shared.Address;
import counterbench.shared.Quantity;
import counterbench.stock.CountDifference;
import counterbench.stock.Ledger;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** What a count found, beside what the book said. */
final class CountTold {
    private final RecordAct.Recorded recorded;
    private final FactRow row;

    CountTold(RecordAct.Recorded recorded) {
        this.recorded = recorded;
        this.row = recorded.facts().get(0);
    }

    String words() {
        String part = row.text("part");
        return part == null ? kit() : loose(part);
    }

    private String loose(String part) {
        BigDecimal amount = Objects.requireNonNull(row.decimal("quantity"));
        String counted = "counted " + Parts.of(recorded.after()).words(part, new Quantity(amount));
        return counted
                + difference(recorded.after().shelf(part).timeline().differences().stream())
                        .map(CountTold::differs)
                        .orElse(", as the book says");
    }

    private static String differs(CountDifference found) {
        Quantity more = found.difference();
        return " where the book says "
                + found.book()
                + ", a difference of "
                + (more.isPositive() ? "+" : "")
                + more;
    }

    private String kit() {
        boolean there = Objects.requireNonNull(row.decimal("quantity")).signum() > 0;
        boolean differs =
                difference(
                                recorded.after().components().stream()
                                        .flatMap(c -> Ledger.of(c.facts()).differences().stream()))
                        .isPresent();
        return "counted kit "
                + row.text("kit")
                + (there ? " present" : " missing")
                + (differs
                        ? ", where the book says " + (there ? "missing" : "present")
                        : ", as the book says");
    }

    private Optional<CountDifference> difference(Stream<CountDifference> all) {
        Address count = new Address(recorded.entry().number(), 1);
        return all.filter(found -> found.fact().equals(count)).findFirst();
    }
}
