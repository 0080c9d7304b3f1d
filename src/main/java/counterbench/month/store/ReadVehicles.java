package counterbench.month.store;

import static counterbench.db.generated.Tables.CONTACTS_FACT;
import static counterbench.db.generated.Tables.JOBS_FACT;
import static counterbench.db.generated.Tables.SITE;
import static counterbench.db.generated.Tables.VEHICLES_FACT;

import counterbench.campaign.Vehicle;
import counterbench.db.Store;
import counterbench.facts.Canonical;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.intake.KeyedMerge;
import counterbench.journal.store.AllPosted;
import counterbench.journal.store.FactTable;
import counterbench.month.CampaignVehicles;
import counterbench.month.CampaignVehicles.Event;
import counterbench.month.CampaignVehicles.State;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;

/** Reads what became of a campaign's vehicles, at all sites of the store. */
public final class ReadVehicles {
    private final Store store;

    public ReadVehicles(Store store) {
        this.store = store;
    }

    private record Row(int siteNo, FactRow row) {}

    /** The vehicles of a campaign. */
    public CampaignVehicles of(String campaign) {
        return store.read(sql -> read(sql, campaign));
    }

    private static CampaignVehicles read(DSLContext sql, String campaign) {
        AllPosted posted = new AllPosted(sql);
        Map<Integer, ZoneId> zones = new HashMap<>();
        sql.select(SITE.SITE_NO, SITE.ZONE)
                .from(SITE)
                .forEach(r -> zones.put((int) r.value1(), ZoneId.of(r.value2())));
        List<String> listed =
                rows(sql, posted, FactKind.VEHICLES, VEHICLES_FACT.CAMPAIGN.eq(campaign)).stream()
                        .map(row -> vin(row.row()))
                        .distinct()
                        .toList();
        List<Event> events = new ArrayList<>();
        rows(sql, posted, FactKind.JOBS, JOBS_FACT.CAMPAIGN.eq(campaign))
                .forEach(row -> job(row, zones).ifPresent(events::add));
        rows(sql, posted, FactKind.CONTACTS, CONTACTS_FACT.CAMPAIGN.eq(campaign))
                .forEach(row -> events.add(contact(row, zones)));
        return new CampaignVehicles(campaign, listed, events);
    }

    private static List<Row> rows(
            DSLContext sql, AllPosted posted, FactKind kind, Condition which) {
        FactTable table = FactTable.of(kind);
        Map<String, Row> byKey = new LinkedHashMap<>();
        List<Row> plain = new ArrayList<>();
        for (Record record :
                sql.selectFrom(table.table())
                        .where(which)
                        .orderBy(table.batch(), table.line())
                        .fetch()) {
            int siteNo = table.siteNo(record);
            if (posted.counts(siteNo, table.batch(record), table.line(record))) {
                Row row = new Row(siteNo, table.row(record));
                if (kind.hasKey()) {
                    byKey.merge(siteNo + " " + Canonical.key(row.row()), row, ReadVehicles::merged);
                } else {
                    plain.add(row);
                }
            }
        }
        plain.addAll(byKey.values());
        return plain;
    }

    private static Row merged(Row one, Row other) {
        FactRow both = KeyedMerge.together(List.of(one.row(), other.row())).orElse(one.row());
        return new Row(one.siteNo(), both);
    }

    private static Optional<Event> job(Row row, Map<Integer, ZoneId> zones) {
        @Nullable Instant at = row.row().time("completed_at");
        String outcome = Objects.toString(row.row().text("outcome"), "");
        if (at == null || outcome.equals("abandoned")) {
            return Optional.empty();
        }
        State state = outcome.equals("not-needed") ? State.NOT_NEEDED : State.COMPLETED;
        return Optional.of(
                new Event(vin(row.row()), day(row, at, zones), state, row.row().text("job"), null));
    }

    private static Event contact(Row row, Map<Integer, ZoneId> zones) {
        Instant at = Objects.requireNonNull(row.row().time("at"));
        @Nullable String reason = row.row().text("reason");
        State state =
                switch (Objects.toString(row.row().text("outcome"), "")) {
                    case "declined" -> State.DECLINED;
                    case "scrapped" -> State.SCRAPPED;
                    case "exported" -> State.EXPORTED;
                    case "unreachable" -> saysStolen(reason) ? State.STOLEN : State.UNREACHABLE;
                    default -> State.OUTSTANDING;
                };
        return new Event(vin(row.row()), day(row, at, zones), state, null, reason);
    }

    private static boolean saysStolen(@Nullable String reason) {
        String plain = Objects.toString(reason, "").toLowerCase(Locale.ROOT);
        return plain.contains("stolen") || plain.contains("theft");
    }

    private static LocalDate day(Row row, Instant at, Map<Integer, ZoneId> zones) {
        return at.atZone(Objects.requireNonNull(zones.get(row.siteNo()))).toLocalDate();
    }

    private static String vin(FactRow row) {
        return Vehicle.compared(Objects.requireNonNull(row.text("vin")));
    }
}
