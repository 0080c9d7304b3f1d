package counterbench.stock.rules;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Site;
import counterbench.stock.Account;
import counterbench.stock.Ledger;
import counterbench.stock.LedgerFacts;
import counterbench.stock.StockEvent.Kind;
import counterbench.stock.StockPaper;
import counterbench.stock.StoreTimeline;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The stock rules on hand-made paper: what holds, what does not, and where the line is. */
class StockRulesTest {
    private static final Site NORTH =
            new Site(
                    1,
                    "NORTH",
                    "North garage",
                    ZoneId.of("America/Chicago"),
                    Currency.getInstance("USD"),
                    Site.Patience.USUAL);
    private static final String WASHER = "QM-4473";

    private final StockPaper paper = new StockPaper();

    private List<Finding> kitFindings() {
        LedgerFacts facts = paper.facts();
        return judge(StockFacts.ofKits(NORTH, facts, Ledger.of(facts)));
    }

    private List<Finding> storeFindings() {
        var moves = paper.ledger().moves().stream().filter(m -> m.touches(Account.STORE)).toList();
        return judge(
                StockFacts.ofStore(NORTH, List.of(StoreTimeline.of(WASHER, moves, paper.counts))));
    }

    private static List<Finding> judge(StockFacts facts) {
        Findings findings = new Findings();
        for (Judge<StockFacts> judge : StockRules.ALL) {
            judge.judge(facts, findings);
        }
        return findings.found();
    }

    private static String inWords(Finding f) {
        return String.join(
                " ",
                f.rule().word(),
                f.subject().kind().word(),
                f.subject().name(),
                String.valueOf(f.subject().part()),
                String.valueOf(f.month()));
    }

    @Test
    void good_paper_has_no_findings() {
        paper.kit("K-1").countKit("K-1", 1).issueKit("K-1", "J-1");
        assertThat(kitFindings()).isEmpty();
    }

    @Test
    void an_incomplete_kit_is_found_once_for_each_missing_part() {
        paper.kit("K-1", WASHER + ":1", "QM-4472:1", WASHER + ":1", "QM-4476:0");
        assertThat(kitFindings())
                .extracting(StockRulesTest::inWords)
                .containsExactly(
                        "kit-incomplete kit K-1 QM-4472 2026-03",
                        "kit-incomplete kit K-1 QM-4473 2026-03");
        assertThat(kitFindings().get(1).message())
                .isEqualTo("kit K-1 (QM-4470-K) came without 2 of QM-4473 on 2026-03-02");
    }

    @Test
    void a_kit_below_zero_is_found_in_the_site_month_of_the_fact() {
        paper.kit("K-1").at("2026-04-01T04:59:00Z").event(Kind.SCRAPPED, "K-1", WASHER, "5");
        assertThat(kitFindings())
                .extracting(StockRulesTest::inWords)
                .containsExactly("balance-negative account KIT(K-1) QM-4473 2026-03");
        assertThat(kitFindings().get(0).message()).contains("KIT(K-1) held -1 of QM-4473");
    }

    @Test
    void the_store_below_zero_is_found_once() {
        paper.issuePart(WASHER, "2", null, "J-1").issuePart(WASHER, "1", null, "J-1");
        assertThat(storeFindings())
                .extracting(StockRulesTest::inWords)
                .containsExactly("balance-negative account STORE QM-4473 2026-03");
    }

    @Test
    void counts_that_differ_make_one_finding_for_each_account_in_the_month_of_the_latest() {
        paper.receipt(WASHER, "40", null).countPart(WASHER, "43");
        paper.at("2026-04-02T12:00:00Z").countPart(WASHER, "41");
        assertThat(storeFindings())
                .extracting(StockRulesTest::inWords)
                .containsExactly("count-difference account STORE QM-4473 2026-04");
        assertThat(storeFindings().get(0).message())
                .isEqualTo(
                        "STORE, part QM-4473: counted 43 on 2026-03-02 where the book says 40 (+3);"
                                + " counted 41 on 2026-04-02 where the book says 43 (-2)");
    }

    @Test
    void a_kit_that_is_not_found_is_a_difference_without_a_part() {
        paper.kit("K-1").countKit("K-1", 0);
        assertThat(kitFindings())
                .extracting(StockRulesTest::inWords)
                .containsExactly("count-difference account KIT(K-1) null 2026-03");
    }

    @Test
    void a_kit_that_was_never_received_is_found_once_however_often_it_is_named() {
        paper.event(Kind.SCRAPPED, "K-404", null, null).countKit("K-404", 0);
        assertThat(kitFindings())
                .extracting(StockRulesTest::inWords)
                .containsExactly("kit-unknown kit K-404 null null");
        assertThat(kitFindings().get(0).evidence()).isEqualTo("never received; scrapped, counted");
    }

    @Test
    void a_kit_that_arrived_from_another_site_is_known() {
        paper.event(Kind.ARRIVED, "K-9", null, null).event(Kind.SENT, "K-9", null, null);
        assertThat(kitFindings()).isEmpty();
    }

    @Test
    void a_loose_event_names_no_kit() {
        paper.event(Kind.SCRAPPED, null, WASHER, "1");
        assertThat(kitFindings()).isEmpty();
    }

    @Test
    void every_finding_is_about_an_account_or_a_kit() {
        paper.kit("K-1", WASHER + ":1").countKit("K-1", 0).countKit("K-404", 1);
        assertThat(kitFindings())
                .extracting(f -> f.subject().kind())
                .isSubsetOf(SubjectKind.ACCOUNT, SubjectKind.KIT);
    }
}
