package counterbench.shell.month;

import counterbench.month.ConsumptionRow;
import counterbench.month.GoodsRow;
import counterbench.month.MonthAccount;
import counterbench.shell.Invocation;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes both tables of a campaign's month; a row leaves the other table's columns empty. */
final class ReconcileRows {
    private static final Column SCRAPPED = Column.number("scrapped");
    private static final List<Column> COMMON =
            List.of(
                    Column.text("table"),
                    Column.text("site"),
                    Column.text("campaign"),
                    Column.text("month"),
                    Column.text("part"));
    private static final List<Column> CONSUMPTION =
            List.of(
                    Column.number("completed_jobs"),
                    Column.number("required"),
                    Column.number("fitted_new"),
                    Column.number("refitted_old"),
                    SCRAPPED,
                    Column.number("left_on_benches"),
                    Column.number("difference"),
                    Column.text("jobs"));
    private static final List<Column> GOODS =
            List.of(
                    Column.number("opening"),
                    Column.number("received"),
                    Column.number("transferred_in"),
                    Column.number("transferred_out"),
                    Column.number("fitted"),
                    Column.number("on_cores"),
                    SCRAPPED,
                    Column.number("returned"),
                    Column.number("count_difference"),
                    Column.number("closing_book"),
                    Column.number("closing_count"),
                    Column.number("unexplained"));

    /**
     * Every column once: both tables have one of what was scrapped, and each table's columns stand
     * in its own order.
     */
    private static final List<Column> ALL =
            Stream.of(
                            COMMON,
                            CONSUMPTION.subList(0, CONSUMPTION.indexOf(SCRAPPED)),
                            GOODS.subList(0, GOODS.indexOf(SCRAPPED)),
                            CONSUMPTION.subList(CONSUMPTION.indexOf(SCRAPPED), CONSUMPTION.size()),
                            GOODS.subList(GOODS.indexOf(SCRAPPED) + 1, GOODS.size()))
                    .flatMap(List::stream)
                    .toList();

    private final String site;
    private final String campaign;
    private final String month;

    ReconcileRows(String site, String campaign, String month) {
        this.site = site;
        this.campaign = campaign;
        this.month = month;
    }

    void write(Invocation in, MonthAccount account) {
        try (Rows rows = in.rows(ALL.toArray(Column[]::new))) {
            String heading = campaign + ", " + month + ", site " + site;
            rows.section("Consumption of " + heading, shown(CONSUMPTION));
            account.consumption(campaign)
                    .forEach(row -> add(rows, "consumption", row.part(), CONSUMPTION, cells(row)));
            rows.section("Goods of " + heading, shown(GOODS));
            account.goods(campaign)
                    .forEach(row -> add(rows, "goods", row.part(), GOODS, cells(row)));
        }
    }

    /** People see once for which site, campaign and month a table is: above it. */
    private static String[] shown(List<Column> columns) {
        return Stream.concat(Stream.of("part"), columns.stream().map(Column::key))
                .toArray(String[]::new);
    }

    private void add(
            Rows rows,
            String table,
            String part,
            List<Column> columns,
            List<@Nullable Object> cells) {
        List<@Nullable Object> row = new ArrayList<>(Collections.nCopies(ALL.size(), null));
        List<@Nullable Object> common = Arrays.asList(table, site, campaign, month, part);
        for (int i = 0; i < common.size(); i++) {
            row.set(i, common.get(i));
        }
        for (int i = 0; i < columns.size(); i++) {
            row.set(ALL.indexOf(columns.get(i)), cells.get(i));
        }
        rows.add(row.toArray());
    }

    private static List<@Nullable Object> cells(ConsumptionRow row) {
        return Arrays.asList(
                row.completedJobs(),
                row.required(),
                row.fittedNew(),
                row.refittedOld(),
                row.scrapped(),
                row.leftOnBenches(),
                row.difference(),
                String.join(" ", row.jobs()));
    }

    private static List<@Nullable Object> cells(GoodsRow row) {
        return Arrays.asList(
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
                row.closingCount(),
                row.unexplained());
    }
}
