package counterbench.month.sheet;

import counterbench.month.ConsumptionRow;
import counterbench.month.GoodsRow;
import counterbench.month.MonthAccount;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The two tables of the month as rows of a workbook. */
final class TableRows {
    private final PartNames names;

    TableRows(PartNames names) {
        this.names = names;
    }

    /** Goods of every part that was there or moved. */
    List<Map<String, @Nullable Object>> balance(MonthAccount account) {
        return account.allGoods().stream()
                .filter(TableRows::isNotEmpty)
                .map(this::balance)
                .toList();
    }

    private static boolean isNotEmpty(GoodsRow row) {
        return Stream.of(
                        row.opening(),
                        row.received(),
                        row.transferredIn(),
                        row.transferredOut(),
                        row.fitted(),
                        row.onCores(),
                        row.scrapped(),
                        row.returned(),
                        row.countDifference(),
                        row.closingBook(),
                        row.closingCount())
                .filter(Objects::nonNull)
                .anyMatch(q -> !q.isZero());
    }

    private Map<String, @Nullable Object> balance(GoodsRow row) {
        return new RowOf()
                .part(row.part(), names)
                .with("opening", row.opening())
                .with("received", row.received())
                .with("transferred_in", row.transferredIn())
                .with("transferred_out", row.transferredOut())
                .with("fitted", row.fitted())
                .with("on_cores", row.onCores())
                .with("scrapped", row.scrapped())
                .with("returned", row.returned())
                .with("count_difference", row.countDifference())
                .with("closing_book", row.closingBook())
                .with("closing_count", row.closingCount())
                .with("unexplained", row.unexplained())
                .values();
    }

    /** Consumption of every campaign that had a job completed in the month. */
    List<Map<String, @Nullable Object>> consumption(MonthAccount account) {
        return account.campaigns().stream()
                .flatMap(
                        campaign ->
                                account.consumption(campaign).stream()
                                        .filter(row -> row.completedJobs() > 0)
                                        .map(row -> consumption(campaign, row)))
                .toList();
    }

    private Map<String, @Nullable Object> consumption(String campaign, ConsumptionRow row) {
        return new RowOf()
                .with("campaign", campaign)
                .part(row.part(), names)
                .with("completed_jobs", row.completedJobs())
                .with("required", row.required())
                .with("fitted_new", row.fittedNew())
                .with("refitted_old", row.refittedOld())
                .with("scrapped", row.scrapped())
                .with("left_on_benches", row.leftOnBenches())
                .with("difference", row.difference())
                .with("jobs", row.jobs().isEmpty() ? null : String.join(", ", row.jobs()))
                .values();
    }
}
