package counterbench.review.store;

import static counterbench.db.generated.Tables.ACKNOWLEDGEMENTS_FACT;
import static counterbench.db.generated.Tables.CORES_FACT;
import static counterbench.db.generated.Tables.CORE_TAG;

import counterbench.cores.Acknowledgement;
import counterbench.cores.CoreEvent;
import counterbench.cores.CoreHistory;
import counterbench.cores.ShipmentFacts;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.store.FactTable;
import counterbench.journal.store.JobRange;
import counterbench.shared.Address;
import counterbench.shared.Site;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;
import org.jooq.Condition;
import org.jooq.DSLContext;

/** Reads shipments whole: the cores on them, and what the return centre says of them. */
final class ShipmentReader {
    private final DSLContext sql;
    private final Site site;
    private final Visible visible;
    private final FactReader reader;

    ShipmentReader(DSLContext sql, Site site, Visible visible, FactReader reader) {
        this.sql = sql;
        this.site = site;
        this.visible = visible;
        this.reader = reader;
    }

    /** The facts of some shipments, by name. */
    List<ShipmentFacts> read(Collection<String> shipments) {
        if (shipments.isEmpty()) {
            return List.of();
        }
        Map<String, Set<String>> named = coresNamedWith(shipments);
        List<ShipmentFacts> facts = new ArrayList<>();
        for (String shipment : new TreeSet<>(shipments)) {
            List<CoreHistory> on =
                    named.getOrDefault(shipment, Set.of()).stream()
                            .flatMap(core -> history(core).stream())
                            .filter(c -> isOn(c, shipment))
                            .toList();
            facts.add(new ShipmentFacts(site, shipment, on, acknowledgements(shipment)));
        }
        return facts;
    }

    private Map<String, Set<String>> coresNamedWith(Collection<String> shipments) {
        Map<String, Set<String>> cores = new TreeMap<>();
        shipments.forEach(shipment -> cores.put(shipment, coresNamedWith(shipment)));
        return cores;
    }

    private Set<String> coresNamedWith(String shipment) {
        return new TreeSet<>(
                sql.select(CORES_FACT.CORE)
                        .from(CORES_FACT)
                        .where(
                                CORES_FACT.SITE_NO.eq((short) site.no()),
                                CORES_FACT.SHIPMENT.eq(shipment))
                        .fetch(CORES_FACT.CORE));
    }

    private Optional<CoreHistory> history(String core) {
        Optional<Integer> jobNo =
                sql.select(CORE_TAG.JOB_NO)
                        .from(CORE_TAG)
                        .where(CORE_TAG.SITE_NO.eq((short) site.no()), CORE_TAG.CORE.eq(core))
                        .fetchOptional(CORE_TAG.JOB_NO);
        FactTable table = FactTable.of(FactKind.CORES);
        List<CoreEvent> events =
                jobNo.map(no -> new JobRange(site.no(), no).contains(table))
                        .map(
                                range ->
                                        read(
                                                table,
                                                range.and(CORES_FACT.CORE.eq(core)),
                                                reader::core))
                        .orElse(List.of());
        return events.isEmpty()
                ? Optional.empty()
                : Optional.of(new CoreHistory(core, events, List.of()));
    }

    private static boolean isOn(CoreHistory core, String shipment) {
        return core.placement().filter(p -> p.shipment().equals(shipment)).isPresent();
    }

    private List<Acknowledgement> acknowledgements(String shipment) {
        FactTable table = FactTable.of(FactKind.ACKNOWLEDGEMENTS);
        return read(
                table,
                table.siteNo()
                        .eq((short) site.no())
                        .and(ACKNOWLEDGEMENTS_FACT.SHIPMENT.eq(shipment)),
                reader::acknowledgement);
    }

    private <T> List<T> read(
            FactTable table, Condition where, BiFunction<Address, FactRow, Optional<T>> reading) {
        return sql
                .selectFrom(table.table())
                .where(where)
                .orderBy(table.batch(), table.line())
                .fetch()
                .stream()
                .flatMap(
                        r ->
                                visible
                                        .address(table, r)
                                        .flatMap(a -> reading.apply(a, table.row(r)))
                                        .stream())
                .toList();
    }
}
