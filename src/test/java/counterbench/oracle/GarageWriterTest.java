package counterbench.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the written garages are good for. */
class GarageWriterTest {

    private static final long SEED = 26;

    @TempDir Path folder;

    @Test
    void two_thousand_jobs_break_every_rule_and_most_jobs_are_in_order() {
        Oracle oracle = GarageWriter.write(SEED, GarageOptions.of(2000), folder).judge();
        assertThat(oracle.findings().stream().map(Finding::rule).collect(Collectors.toSet()))
                .as("seed %d", SEED)
                .isEqualTo(Finding.SEVERITIES.keySet());
        long odd =
                oracle.findings().stream()
                        .filter(f -> f.subjectKind().equals("job"))
                        .map(Finding::subject)
                        .distinct()
                        .count();
        assertThat(odd).isLessThan(400);
    }

    @Test
    void the_order_of_rows_and_files_does_not_matter() {
        GarageOptions plain = GarageOptions.of(600);
        Oracle one = GarageWriter.write(SEED, plain, folder.resolve("one")).judge();
        Oracle other =
                GarageWriter.write(SEED, plain.scattered(3), folder.resolve("other")).judge();
        assertThat(other.findings().stream().map(Finding::line))
                .containsExactlyElementsOf(one.findings().stream().map(Finding::line).toList());
        assertThat(other.balances()).isEqualTo(one.balances());
    }

    @Test
    void a_garage_can_be_judged_as_of_any_midnight() {
        Garage garage = GarageWriter.write(SEED, GarageOptions.of(500).withContested(), folder);
        for (int month = 2; month <= 12; month++) {
            Instant midnight =
                    LocalDate.of(2026, month, 1).atStartOfDay(garage.site().zone()).toInstant();
            String last = YearMonth.of(2026, month).toString();
            assertThat(garage.judge(midnight).findings())
                    .as("as of %s", midnight)
                    .allMatch(f -> f.month().compareTo(last) <= 0);
        }
    }

    @Test
    void goods_do_not_vanish() {
        Oracle oracle = GarageWriter.write(SEED, GarageOptions.of(800), folder).judge();
        Map<String, BigDecimal> sums =
                oracle.balances().stream()
                        .collect(
                                Collectors.groupingBy(
                                        Balance::part,
                                        Collectors.reducing(
                                                BigDecimal.ZERO,
                                                Balance::quantity,
                                                BigDecimal::add)));
        assertThat(sums.values()).allMatch(sum -> sum.signum() == 0);
        assertThat(oracle.goods("HX-26-031", YearMonth.of(2026, 6)))
                .isNotEmpty()
                .allMatch(row -> row.unexplained().signum() == 0);
    }
}
