package counterbench.journal.store;

import static counterbench.db.generated.Tables.SITE;
import static counterbench.db.generated.Tables.TOUCHED;

import counterbench.campaign.Vehicle;
import counterbench.facts.Concern;
import counterbench.facts.FactRow;
import counterbench.facts.Thing;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jooq.DSLContext;

/**
 * What an entry touches, so that the review judges only that again. An entry that touches more than
 * a few thousand things touches all.
 */
final class Touched {
    /** The most things that are written down one by one. */
    static final int MOST = 5_000;

    private static final String ALL = "all";

    private final Set<Name> names = new HashSet<>();
    private boolean all;

    private record Name(String what, String name) {
        /** A vehicle may have been done at another site, too. */
        boolean concernsOtherSites() {
            return what.equals(ALL) || what.equals(Thing.VIN.word());
        }
    }

    void add(FactRow row) {
        if (all) {
            return;
        }
        Concern concern = Concern.of(row);
        concern.names().forEach((thing, name) -> add(concern, thing, name));
        all = concern.all() || isOfWholeShipment(concern) || names.size() > MOST;
    }

    private void add(Concern concern, Thing thing, String name) {
        // A credit is judged with its claim, whichever core it names.
        if (thing != Thing.CORE || !concern.isOf(Thing.CREDIT)) {
            names.add(new Name(thing.word(), thing == Thing.VIN ? Vehicle.compared(name) : name));
        }
    }

    private static boolean isOfWholeShipment(Concern concern) {
        return concern.isOf(Thing.SHIPMENT)
                && !concern.isOf(Thing.CORE)
                && !concern.isOf(Thing.SERIAL);
    }

    /** Writes down what the entry of that number touched. */
    void write(DSLContext sql, int siteNo, long number) {
        if (all) {
            names.clear();
            names.add(new Name(ALL, ""));
        }
        if (names.isEmpty()) {
            return;
        }
        List<Object[]> rows = new ArrayList<>();
        names.forEach(name -> rows.add(row(siteNo, number, name)));
        for (short other : otherSites(sql, siteNo)) {
            names.stream()
                    .filter(Name::concernsOtherSites)
                    .forEach(name -> rows.add(row(other, number, name)));
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

    private static Object[] row(int siteNo, long number, Name name) {
        return new Object[] {(short) siteNo, number, name.what(), name.name()};
    }

    private static List<Short> otherSites(DSLContext sql, int siteNo) {
        return sql.select(SITE.SITE_NO)
                .from(SITE)
                .where(SITE.SITE_NO.ne((short) siteNo))
                .fetch(SITE.SITE_NO);
    }
}
