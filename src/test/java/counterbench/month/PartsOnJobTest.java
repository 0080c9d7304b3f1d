package counterbench.month;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.Condition;
import counterbench.campaign.KitLine;
import counterbench.campaign.KitTerms;
import counterbench.campaign.Pack;
import counterbench.campaign.PartUnit;
import counterbench.job.Job;
import counterbench.job.JudgedJob;
import counterbench.job.Outcome;
import counterbench.job.Requirements;
import counterbench.job.rules.HardwareFacts;
import counterbench.job.rules.JobGoods;
import counterbench.shared.Quantity;
import counterbench.shared.Site;
import counterbench.stock.Account;
import counterbench.stock.Ledger;
import counterbench.stock.StockPaper;
import counterbench.stock.Use;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What one job required, used and still has, on hand-made paper. */
class PartsOnJobTest {
    private static final String BOLT = "QM-4472";
    private static final String OLD_BOLT = "QM-4402";
    private static final String WASHER = "QM-4473";
    private static final String SEALANT = "QM-4475";
    private static final String PLUG = "QM-4476";
    private static final Condition AUTOMATIC = new Condition(Map.of("transmission", "automatic"));

    private static final Instant END = Instant.parse("2026-03-31T12:00:00Z");
    private static final Site NORTH =
            new Site(
                    1,
                    "NORTH",
                    "North garage",
                    ZoneId.of("America/Chicago"),
                    Currency.getInstance("USD"),
                    Site.Patience.USUAL);
    private static final Job JOB =
            new Job(
                    1,
                    "J-1",
                    "QM-26-014",
                    "0QM00000000000001",
                    StockPaper.START,
                    null,
                    null,
                    END,
                    Outcome.COMPLETED,
                    null,
                    null);

    private final StockPaper paper = new StockPaper();
    private Condition when = Condition.ALWAYS;

    private Pack pack() {
        return new Pack(
                "QM-26-014",
                "Transfer pump",
                "B",
                LocalDate.of(2026, 2, 2),
                true,
                new TreeMap<>(),
                List.of(
                        new KitTerms(
                                "QM-4470-K",
                                1,
                                Condition.ALWAYS,
                                List.of(
                                        line(BOLT, PartUnit.EACH, "1", "1", false, OLD_BOLT),
                                        line(WASHER, PartUnit.EACH, "4", "4", false),
                                        line(SEALANT, PartUnit.ML, "3.5", "3", false),
                                        line(PLUG, PartUnit.EACH, "5", "5", true)))),
                List.of(),
                List.of(),
                List.of(),
                null);
    }

    private KitLine line(
            String part,
            PartUnit unit,
            String quantity,
            String atLeast,
            boolean onCore,
            String... replaces) {
        return new KitLine(
                part,
                part,
                unit,
                Quantity.of(quantity),
                Quantity.of(atLeast),
                !unit.isMeasured(),
                false,
                false,
                onCore,
                List.of(replaces),
                BigDecimal.ZERO,
                part.equals(WASHER) ? when : Condition.ALWAYS);
    }

    private String part(String part) {
        Ledger ledger = paper.ledger();
        return PartsOnJob.of(facts(ledger.balance(Account.bench("J-1"))), ledger.moves()).stream()
                .filter(p -> p.part().equals(part))
                .map(PartsOnJobTest::inWords)
                .findFirst()
                .orElse("none");
    }

    private HardwareFacts facts(Map<String, Quantity> bench) {
        JudgedJob judged = new JudgedJob(NORTH, JOB, END.plusSeconds(1));
        JobGoods goods =
                new JobGoods(
                        List.of(),
                        paper.uses.stream().filter(u -> u.job().equals("J-1")).toList(),
                        Map.of(),
                        Map.of(),
                        Map.of(),
                        bench,
                        Map.of());
        return new HardwareFacts(judged, Requirements.of(pack(), Map.of()), goods);
    }

    private static String inWords(PartOnJob p) {
        return String.format(
                "required %s new %s old %s scrapped %s left %s%s",
                p.required(),
                p.fittedNew(),
                p.refittedOld(),
                p.scrapped(),
                p.left(),
                p.amiss() ? " amiss" : "");
    }

    private StockPaper issued() {
        return paper.kit("K-1").issueKit("K-1", "J-1");
    }

    private StockPaper washers(String fresh) {
        return paper.use("J-1", WASHER, fresh, Use.Condition.NEW);
    }

    @Test
    void a_job_that_fitted_what_was_required_is_as_it_should_be() {
        issued();
        washers("4");
        assertThat(part(WASHER)).isEqualTo("required 4 new 4 old 0 scrapped 0 left 0");
    }

    @Test
    void a_single_use_part_refitted_is_amiss() {
        issued();
        washers("3").use("J-1", WASHER, "1", Use.Condition.REUSED);
        assertThat(part(WASHER)).isEqualTo("required 4 new 3 old 1 scrapped 0 left 1 amiss");
    }

    @Test
    void a_bench_that_is_not_clear_is_amiss() {
        washers("4");
        assertThat(part(WASHER)).isEqualTo("required 4 new 4 old 0 scrapped 0 left -4 amiss");
    }

    @Test
    void a_part_short_is_amiss() {
        issued();
        washers("3").use("J-1", WASHER, "1", Use.Condition.SCRAPPED);
        assertThat(part(WASHER)).isEqualTo("required 4 new 3 old 0 scrapped 1 left 0 amiss");
    }

    @Test
    void a_counted_part_over_is_amiss() {
        issued().issuePart(WASHER, "1", null, "J-1");
        washers("5");
        assertThat(part(WASHER)).isEqualTo("required 4 new 5 old 0 scrapped 0 left 0 amiss");
    }

    @Test
    void a_part_that_the_pack_does_not_know_is_amiss_once_it_is_fitted() {
        paper.issuePart("QM-9999", "1", null, "J-1");
        paper.use("J-1", "QM-9999", "1", Use.Condition.NEW);
        assertThat(part("QM-9999")).isEqualTo("required 0 new 1 old 0 scrapped 0 left 0 amiss");
    }

    @Test
    void a_part_of_which_it_cannot_be_told_whether_it_applies_is_not_compared() {
        when = AUTOMATIC;
        issued();
        washers("3").use("J-1", WASHER, "1", Use.Condition.PUT_BACK);
        assertThat(part(WASHER)).isEqualTo("required 0 new 3 old 0 scrapped 0 left 0");
    }

    @Test
    void a_measured_part_is_right_from_its_least_and_its_rest_is_scrapped() {
        issued().use("J-1", SEALANT, "3", Use.Condition.NEW).complete("J-1", SEALANT);
        assertThat(part(SEALANT)).isEqualTo("required 3.5 new 3 old 0 scrapped 0.5 left 0");
    }

    @Test
    void a_measured_part_below_its_least_is_amiss() {
        issued().use("J-1", SEALANT, "2.999", Use.Condition.NEW).complete("J-1", SEALANT);
        assertThat(part(SEALANT)).endsWith("scrapped 0.501 left 0 amiss");
    }

    @Test
    void a_measured_part_is_never_over() {
        issued().issuePart(SEALANT, "1", null, "J-1");
        paper.use("J-1", SEALANT, "4.5", Use.Condition.NEW);
        assertThat(part(SEALANT)).isEqualTo("required 3.5 new 4.5 old 0 scrapped 0 left 0");
    }

    @Test
    void plugs_are_not_required_on_the_vehicle() {
        issued().use("J-1", PLUG, "5", Use.Condition.ON_CORE, null, "C-1", null);
        assertThat(part(PLUG)).isEqualTo("required 0 new 0 old 0 scrapped 0 left 0");
    }

    @Test
    void what_is_taken_off_is_scrapped_on_the_job() {
        issued().issuePart(WASHER, "1", null, "J-1");
        washers("5")
                .use("J-1", WASHER, "1", Use.Condition.TAKEN_OFF, null, null, Use.Condition.NEW);
        assertThat(part(WASHER)).isEqualTo("required 4 new 4 old 0 scrapped 1 left 0");
    }

    @Test
    void an_older_number_counts_as_the_part_that_replaces_it() {
        paper.issuePart(OLD_BOLT, "1", null, "J-1");
        paper.use("J-1", OLD_BOLT, "1", Use.Condition.NEW);
        assertThat(part(BOLT)).isEqualTo("required 1 new 1 old 0 scrapped 0 left 0");
        assertThat(part(OLD_BOLT)).isEqualTo("none");
    }

    @Test
    void a_bench_is_looked_at_by_real_number() {
        issued().use("J-1", OLD_BOLT, "1", Use.Condition.NEW);
        assertThat(part(BOLT)).isEqualTo("required 1 new 1 old 0 scrapped 0 left 0 amiss");
    }

    @Test
    void what_other_jobs_of_the_component_do_is_theirs() {
        issued().use("J-2", WASHER, "1", Use.Condition.SCRAPPED, "K-1");
        assertThat(part(WASHER)).startsWith("required 4 new 0 old 0 scrapped 0 left 3");
    }
}
