package counterbench.shell.counter;

import counterbench.acts.CampaignNeed;
import counterbench.shell.Invocation;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes the three tables of a need; a row leaves the other tables' columns empty. */
final class NeedRows {
    private static final Column TABLE = Column.text("table");
    private static final Column SITE = Column.text("site");
    private static final Column CAMPAIGN = Column.text("campaign");
    private static final Column PART = Column.text("part");
    private static final Column ON_ORDER = Column.number("on_order");
    private static final Column EXPECTED = Column.text("expected_on");
    private static final List<Column> VEHICLES =
            List.of(
                    Column.number("listed"),
                    Column.number("done"),
                    Column.number("cannot_come"),
                    Column.number("open"),
                    Column.number("open_jobs"),
                    Column.number("jobs_without_kit"));
    private static final List<Column> KITS =
            List.of(
                    PART,
                    Column.number("per_job"),
                    Column.number("open_vehicles"),
                    Column.number("wanted_by_jobs"),
                    Column.number("in_date"),
                    Column.number("expired"),
                    Column.number("lasts_jobs"),
                    ON_ORDER,
                    EXPECTED);
    private static final List<Column> PARTS =
            List.of(
                    PART,
                    Column.number("needed"),
                    Column.number("in_store"),
                    ON_ORDER,
                    EXPECTED,
                    Column.text("jobs"));
    private static final List<Column> ALL =
            Stream.of(List.of(TABLE, SITE, CAMPAIGN), VEHICLES, KITS, PARTS)
                    .flatMap(List::stream)
                    .distinct()
                    .toList();

    private final String site;

    NeedRows(String site) {
        this.site = site;
    }

    void write(Invocation in, CampaignNeed need) {
        try (Rows rows = in.rows(ALL.toArray(Column[]::new))) {
            String heading = need.campaign() + ", site " + site;
            rows.section("Vehicles of " + heading, keys(VEHICLES));
            add(rows, "vehicles", need, VEHICLES, vehicles(need));
            rows.section("Kits for " + heading, keys(KITS));
            boolean listed = need.vehicles().listed() > 0;
            need.kits().forEach(kit -> add(rows, "kits", need, KITS, cells(kit, listed)));
            if (!need.parts().isEmpty()) {
                rows.section("Loose parts that open jobs need besides", keys(PARTS));
                need.parts().forEach(part -> add(rows, "parts", need, PARTS, cells(part)));
            }
        }
    }

    private static String[] keys(List<Column> columns) {
        return columns.stream().map(Column::key).toArray(String[]::new);
    }

    private void add(
            Rows rows,
            String table,
            CampaignNeed need,
            List<Column> columns,
            List<@Nullable Object> cells) {
        List<@Nullable Object> row = new ArrayList<>(Collections.nCopies(ALL.size(), null));
        row.set(ALL.indexOf(TABLE), table);
        row.set(ALL.indexOf(SITE), site);
        row.set(ALL.indexOf(CAMPAIGN), need.campaign());
        for (int i = 0; i < columns.size(); i++) {
            row.set(ALL.indexOf(columns.get(i)), cells.get(i));
        }
        rows.add(row.toArray());
    }

    private static List<@Nullable Object> vehicles(CampaignNeed need) {
        CampaignNeed.Vehicles listed = need.vehicles();
        boolean known = listed.listed() > 0;
        return Arrays.asList(
                known ? listed.listed() : null,
                known ? listed.done() : null,
                known ? listed.cannotCome() : null,
                known ? listed.open() : null,
                need.openJobs(),
                need.jobsWithoutKit());
    }

    private static List<@Nullable Object> cells(CampaignNeed.OfKit kit, boolean listed) {
        return Arrays.asList(
                kit.part(),
                kit.perJob(),
                listed ? kit.vehicles() : null,
                kit.wanted(),
                kit.inDate(),
                kit.expired(),
                kit.lasts(),
                kit.onOrder(),
                kit.expectedOn());
    }

    private static List<@Nullable Object> cells(CampaignNeed.OfPart part) {
        return Arrays.asList(
                part.part(),
                part.needed(),
                part.inStore(),
                part.onOrder(),
                part.expectedOn(),
                String.join(" ", part.jobs()));
    }
}
