package counterbench.care.store;

import static counterbench.db.generated.Tables.ENTRY;
import static counterbench.db.generated.Tables.STAGING;

import counterbench.care.Check;
import counterbench.db.Migrations;
import counterbench.db.Store;
import counterbench.db.generated.tables.records.StagingRecord;
import counterbench.journal.store.FactTable;
import counterbench.journal.store.Verification;
import counterbench.people.store.StaffBook;
import counterbench.shared.Site;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.flywaydb.core.api.MigrationVersion;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** Looks into the store: its version, its journals, and what dead imports have left in it. */
final class CheckStore {
    private static final Duration ALIVE = Duration.ofMinutes(2);

    private final Store store;
    private final Consumer<Check> checks;

    CheckStore(Store store, Consumer<Check> checks) {
        this.store = store;
        this.checks = checks;
    }

    void run(Instant now) {
        Optional<String> version = Migrations.versionOf(store);
        checks.accept(version.map(CheckStore::versionCheck).orElseGet(CheckStore::empty));
        if (version.filter(Migrations.LATEST::equals).isPresent()) {
            List<Site> sites = new StaffBook(store).sites();
            if (sites.isEmpty()) {
                checks.accept(empty());
            }
            sites.forEach(site -> checks.accept(journalCheck(site, now)));
            store.readSnapshot(
                    sql -> {
                        checkStages(sql, now);
                        checkOrphans(sql);
                        return true;
                    });
        }
    }

    static Check empty() {
        return Check.note("store", "no site is set up yet", "type setup; help setup tells how");
    }

    private static Check versionCheck(String version) {
        if (version.equals(Migrations.LATEST)) {
            return Check.good("store", "it opens and is of version " + version);
        }
        return MigrationVersion.fromVersion(version).isNewerThan(Migrations.LATEST)
                ? Check.bad(
                        "store",
                        "it is of version " + version + ", this program knows " + Migrations.LATEST,
                        "use the newer program")
                : Check.note(
                        "store",
                        "it is of version " + version + ", older than the program",
                        "nothing: the next command backs it up and brings it up to date");
    }

    private Check journalCheck(Site site, Instant now) {
        String what = "journal of " + site.site();
        Verification.Outcome outcome = new VerifyJournal(store).run(site, now);
        return outcome.broken()
                .map(
                        broken ->
                                Check.bad(
                                        what,
                                        "entry "
                                                + broken.number()
                                                + " does not hold: "
                                                + broken.why(),
                                        "keep a copy of the home folder, and restore the newest"
                                                + " backup that holds into another"))
                .orElseGet(() -> Check.good(what, outcome.holds()));
    }

    private void checkStages(DSLContext sql, Instant now) {
        for (StagingRecord stage : sql.selectFrom(STAGING).orderBy(STAGING.SITE_NO).fetch()) {
            boolean alive = stage.getHeartbeat().isAfter(now.minus(ALIVE));
            checks.accept(
                    Check.note(
                            "imports",
                            alive
                                    ? stage.getPerson() + " is importing just now"
                                    : "an import by " + stage.getPerson() + " did not end",
                            alive ? "wait until it ends" : "import again, which clears it away"));
        }
    }

    /** Rows that neither an entry nor a running import bears count nowhere and take up room. */
    private void checkOrphans(DSLContext sql) {
        long orphans = 0;
        for (FactTable table : FactTable.values()) {
            orphans +=
                    sql.fetchCount(
                            DSL.selectOne()
                                    .from(table.table())
                                    .leftJoin(ENTRY)
                                    .on(ENTRY.BATCH.eq(table.batch()))
                                    .leftJoin(STAGING)
                                    .on(STAGING.BATCH.eq(table.batch()))
                                    .where(ENTRY.BATCH.isNull(), STAGING.BATCH.isNull()));
        }
        if (orphans > 0) {
            checks.accept(
                    Check.bad(
                            "imports",
                            orphans + " rows belong to no entry and to no import",
                            "nothing reads them; tell whoever looks after the program"));
        }
    }
}
