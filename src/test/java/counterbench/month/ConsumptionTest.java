package counterbench.month;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.campaign.Condition;
import counterbench.campaign.KitLine;
import counterbench.campaign.KitTerms;
import counterbench.campaign.Pack;
import counterbench.campaign.PartUnit;
import counterbench.shared.Quantity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The consumption table on hand-made jobs. */
class ConsumptionTest {
    private static final String WASHER = "QM-4473";
    private static final String OLD_BOLT = "QM-4402";
    private static final String BOLT = "QM-4472";

    private final Consumption consumption =
            new Consumption(
                    CampaignParts.of(
                            List.of(
                                    pack("A", line(OLD_BOLT), line(WASHER)),
                                    pack("B", line(BOLT, OLD_BOLT)))));

    private static Pack pack(String revision, KitLine... lines) {
        return new Pack(
                "QM-26-014",
                "Transfer pump",
                revision,
                LocalDate.of(2026, 2, 2),
                true,
                new TreeMap<>(),
                List.of(new KitTerms("QM-4470-K", 1, Condition.ALWAYS, Arrays.asList(lines))),
                List.of(),
                List.of(),
                List.of(),
                null);
    }

    private static KitLine line(String part, String... replaces) {
        return new KitLine(
                part,
                part,
                PartUnit.EACH,
                Quantity.ONE,
                Quantity.ONE,
                true,
                false,
                false,
                false,
                List.of(replaces),
                BigDecimal.ZERO,
                Condition.ALWAYS);
    }

    private static PartOnJob washers(String required, String fitted, String old, boolean amiss) {
        return new PartOnJob(
                WASHER,
                Quantity.of(required),
                Quantity.of(fitted),
                Quantity.of(old),
                Quantity.of("0.5"),
                Quantity.of(old),
                amiss);
    }

    private ConsumptionRow row(String part) {
        return consumption.rows().stream()
                .filter(r -> r.part().equals(part))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void rows_add_up_over_jobs_and_name_those_to_look_at() {
        consumption.add("J-3", List.of(washers("4", "3", "1", true)));
        consumption.add("J-1", List.of(washers("4", "4", "0", false)));
        consumption.add("J-2", List.of(washers("4", "2", "1", true)));
        ConsumptionRow row = row(WASHER);
        assertThat(row.completedJobs()).isEqualTo(3);
        assertThat(row.required()).hasToString("12");
        assertThat(row.fittedNew()).hasToString("9");
        assertThat(row.refittedOld()).hasToString("2");
        assertThat(row.scrapped()).hasToString("1.5");
        assertThat(row.leftOnBenches()).hasToString("2");
        assertThat(row.difference()).hasToString("-1");
        assertThat(row.jobs()).containsExactly("J-2", "J-3");
    }

    @Test
    void every_part_of_any_revision_has_a_row_even_without_a_job() {
        assertThat(consumption.rows())
                .extracting(ConsumptionRow::part)
                .containsExactly(OLD_BOLT, BOLT, WASHER);
        assertThat(row(WASHER).completedJobs()).isZero();
        assertThat(row(WASHER).required()).hasToString("0");
    }

    @Test
    void goods_show_listed_numbers_older_ones_that_occur_and_what_was_fitted() {
        CampaignParts parts = CampaignParts.of(List.of(pack("B", line(BOLT, OLD_BOLT, "QM-3"))));
        assertThat(parts.forGoods(List.of("QM-1", OLD_BOLT), List.of("QM-2")))
                .containsExactly("QM-2", OLD_BOLT, BOLT);
    }
}
