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

    private final PartNumbers numbers =
            new PartNumbers(
                    List.of(
                            pack("A", line(OLD_BOLT), line(WASHER)),
                            pack("B", line(BOLT, OLD_BOLT))));
    private final Consumption consumption = new Consumption(numbers);

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

    private static PartOnJob counted(String part, int required, int fitted, int old, int left) {
        return new PartOnJob(
                part,
                Quantity.of(required),
                Quantity.of(required),
                true,
                true,
                true,
                Quantity.of(fitted),
                Quantity.of(old),
                Quantity.ZERO,
                Quantity.of(left));
    }

    private static PartOnJob measured(String fitted) {
        return new PartOnJob(
                "QM-4475",
                Quantity.of("3.5"),
                Quantity.of("3"),
                false,
                true,
                false,
                Quantity.of(fitted),
                Quantity.ZERO,
                Quantity.of("0.5"),
                Quantity.ZERO);
    }

    private ConsumptionRow row(String part) {
        return consumption.rows().stream()
                .filter(r -> r.part().equals(part))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void rows_add_up_over_jobs() {
        consumption.add("J-1", List.of(counted(WASHER, 4, 4, 0, 0)));
        consumption.add("J-2", List.of(counted(WASHER, 4, 3, 1, 1)));
        ConsumptionRow row = row(WASHER);
        assertThat(row.completedJobs()).isEqualTo(2);
        assertThat(row.required()).hasToString("8");
        assertThat(row.fittedNew()).hasToString("7");
        assertThat(row.refittedOld()).hasToString("1");
        assertThat(row.leftOnBenches()).hasToString("1");
        assertThat(row.difference()).hasToString("0");
        assertThat(row.jobs()).containsExactly("J-2");
    }

    @Test
    void older_numbers_count_as_the_part_that_replaces_them() {
        consumption.add("J-1", List.of(counted(BOLT, 1, 0, 0, 0), counted(OLD_BOLT, 0, 1, 0, 0)));
        assertThat(row(BOLT).fittedNew()).hasToString("1");
        assertThat(row(BOLT).jobs()).isEmpty();
        assertThat(consumption.rows())
                .extracting(ConsumptionRow::part)
                .containsExactly(BOLT, WASHER);
        assertThat(consumption.fittedParts()).containsExactly(OLD_BOLT);
    }

    @Test
    void short_over_reused_and_left_jobs_are_named_in_order() {
        consumption.add("J-4", List.of(counted(WASHER, 4, 3, 0, 0)));
        consumption.add("J-3", List.of(counted(WASHER, 4, 5, 0, 0)));
        consumption.add("J-2", List.of(counted(WASHER, 4, 3, 1, 0)));
        consumption.add("J-1", List.of(counted(WASHER, 4, 4, 0, -1)));
        consumption.add("J-0", List.of(counted(WASHER, 4, 4, 0, 0)));
        assertThat(row(WASHER).jobs()).containsExactly("J-1", "J-2", "J-3", "J-4");
    }

    @Test
    void a_measured_part_is_amiss_below_its_least_and_never_above() {
        consumption.add("J-1", List.of(measured("3")));
        consumption.add("J-2", List.of(measured("2.999")));
        consumption.add("J-3", List.of(measured("4")));
        assertThat(row("QM-4475").jobs()).containsExactly("J-2");
        assertThat(row("QM-4475").scrapped()).hasToString("1.5");
        assertThat(row("QM-4475").difference()).hasToString("-0.501");
    }

    @Test
    void every_part_of_the_campaign_has_a_row_without_any_job() {
        assertThat(row(WASHER).completedJobs()).isZero();
        assertThat(row(WASHER).required()).hasToString("0");
    }

    @Test
    void goods_show_listed_numbers_older_ones_that_occur_and_what_was_fitted() {
        assertThat(numbers.real(List.of("QM-1", OLD_BOLT), List.of("QM-2")))
                .containsExactly("QM-2", OLD_BOLT, BOLT, WASHER);
    }

    @Test
    void numbers_that_replace_each_other_come_to_an_end() {
        PartNumbers circle =
                new PartNumbers(List.of(pack("A", line("QM-1", "QM-2"), line("QM-2", "QM-1"))));
        assertThat(circle.newest("QM-1")).isIn("QM-1", "QM-2");
    }
}
