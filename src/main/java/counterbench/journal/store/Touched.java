package counterbench.journal.store;

import static counterbench.db.generated.Tables.SITE;
import static counterbench.db.generated.Tables.TOUCHED;

import counterbench.campaign.Vehicle;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;

/**
 * What an entry touches, so that the review judges only that again. An entry that touches more than
 * a few thousand things touches all.
 */
final class Touched {
    /** The most things that are written down one by one. */
    static final int MOST = 5_000;

    private final Set<Thing> things = new HashSet<>();
    private boolean all;

    /** What sort of thing is touched. */
    enum What {
        JOB,
        KIT,
        PART,
        VIN,
        CORE,
        SERIAL,
        SHIPMENT,
        CLAIM,
        CREDIT,
        ALL;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private record Thing(What what, String name) {}

    void add(FactRow row) {
        if (all) {
            return;
        }
        addThings(row);
        if (things.size() > MOST) {
            all = true;
            things.clear();
        }
    }

    private void addThings(FactRow row) {
        switch (row.kind()) {
            case JOBS -> {
                add(What.JOB, row.text("job"));
                add(What.VIN, Vehicle.compared(String.valueOf(row.text("vin"))));
            }
            case MARKS -> add(What.JOB, row.text("job"));
            case ISSUES, USES -> addHardware(row);
            case CLAIMS -> {
                add(What.JOB, row.text("job"));
                add(What.CLAIM, row.text("claim"));
            }
            case CORES -> {
                add(What.JOB, row.text("job"));
                add(What.CORE, row.text("core"));
                add(What.SHIPMENT, row.text("shipment"));
            }
            case KITS -> add(What.KIT, row.text("kit"));
            case RECEIPTS -> add(What.PART, row.text("part"));
            case MOVES, COUNTS -> addShelf(row);
            case ACKNOWLEDGEMENTS -> addAcknowledged(row);
            case CREDITS, MATCHES -> {
                add(What.CLAIM, row.text("claim"));
                add(What.CREDIT, row.text("remittance"));
            }
            case VEHICLES, INSTRUMENTS, CALIBRATIONS, PARTS_LIST, SITES, PACKS, REVERSALS ->
                    all = true;
            case PEOPLE,
                    RATES,
                    ORDERS,
                    CONTACTS,
                    SHIPMENTS,
                    SETTLEMENTS,
                    OVERRIDES,
                    SEALS,
                    PINS,
                    ROLE_CHANGES -> {
                // No rule reads these.
            }
        }
    }

    private void addHardware(FactRow row) {
        add(What.JOB, row.text("job"));
        add(What.KIT, row.text("kit"));
        boolean movesLoose =
                row.kind() == FactKind.ISSUES || "put-back".equals(row.text("condition"));
        add(What.PART, movesLoose && row.text("kit") == null ? row.text("part") : null);
    }

    private void addShelf(FactRow row) {
        add(What.KIT, row.text("kit"));
        boolean ofPart = row.kind() == FactKind.MOVES || row.text("kit") == null;
        add(What.PART, ofPart ? row.text("part") : null);
    }

    private void addAcknowledged(FactRow row) {
        add(What.CORE, row.text("core"));
        add(What.SERIAL, row.text("serial"));
        add(What.SHIPMENT, row.text("shipment"));
        // A row that names neither speaks of every core of the shipment.
        all |= row.text("core") == null && row.text("serial") == null;
    }

    private void add(What what, @Nullable String name) {
        if (name != null) {
            things.add(new Thing(what, name));
        }
    }

    /** Writes down what the entry of that number touched. */
    void write(DSLContext sql, int siteNo, long number) {
        if (all) {
            things.clear();
            things.add(new Thing(What.ALL, ""));
        }
        if (things.isEmpty()) {
            return;
        }
        List<Object[]> rows = new ArrayList<>();
        things.forEach(t -> rows.add(row(siteNo, number, t)));
        for (short other : otherSites(sql, siteNo)) {
            things.stream()
                    .filter(t -> t.what() == What.ALL || t.what() == What.VIN)
                    .forEach(t -> rows.add(row(other, number, t)));
        }
        sql.batch(
                        sql.insertInto(
                                        TOUCHED,
                                        TOUCHED.SITE_NO,
                                        TOUCHED.NUMBER,
                                        TOUCHED.WHAT,
                                        TOUCHED.NAME)
                                .values((Short) null, null, null, null)
                                .onConflict(
                                        TOUCHED.SITE_NO, TOUCHED.NUMBER, TOUCHED.WHAT, TOUCHED.NAME)
                                .doNothing())
                .bind(rows.toArray(Object[][]::new))
                .execute();
    }

    private static Object[] row(int siteNo, long number, Thing thing) {
        return new Object[] {(short) siteNo, number, thing.what().word(), thing.name()};
    }

    /** A vehicle may have been done at another site, too. */
    private static List<Short> otherSites(DSLContext sql, int siteNo) {
        return sql.select(SITE.SITE_NO)
                .from(SITE)
                .where(SITE.SITE_NO.ne((short) siteNo))
                .fetch(SITE.SITE_NO);
    }
}
