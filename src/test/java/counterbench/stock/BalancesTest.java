package counterbench.stock;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Balances accumulated from moves. */
class BalancesTest {
    @Test
    void rows_stand_by_account_then_part_without_zeros() {
        StockPaper paper = new StockPaper().kit("K-1").issueKit("K-1", "J-1");
        paper.use("J-1", "QM-4473", "4", Use.Condition.NEW);
        Balances balances = new Balances(Account::isLocal);
        paper.ledger().moves().forEach(balances::add);
        assertThat(balances.rows())
                .extracting(r -> r.account() + " " + r.part() + " " + r.quantity())
                .containsExactly(
                        "BENCH(J-1) QM-4471 1",
                        "BENCH(J-1) QM-4472 1",
                        "BENCH(J-1) QM-4475 3.5",
                        "BENCH(J-1) QM-4476 5",
                        "VEHICLE(J-1) QM-4473 4");
    }
}
