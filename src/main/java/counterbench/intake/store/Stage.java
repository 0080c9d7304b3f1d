package counterbench.intake.store;

import static counterbench.db.generated.Sequences.BATCH_NO;

import counterbench.db.Scratch;
import counterbench.db.Store;
import counterbench.facts.FactRow;
import counterbench.journal.Draft;
import counterbench.journal.Entry;
import counterbench.journal.store.SealReader;
import counterbench.journal.store.StagedBatch;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jooq.DSLContext;
import org.jooq.exception.IntegrityConstraintViolationException;

/**
 * The rows of one site that an import is going to record: written in small commits under a batch
 * that no entry names yet, so that nobody sees them before the import is posted.
 */
final class Stage {
    private static final int CHUNK = 1_000;

    private final Store store;
    private final Site site;
    private final StagedBatch batch;
    private final List<FactRow> chunk = new ArrayList<>(CHUNK);

    Stage(Store store, Site site, String person, Instant now, Scratch scratch) {
        this.store = store;
        this.site = site;
        long number = store.writeUnsynced(sql -> Objects.requireNonNull(sql.nextval(BATCH_NO)));
        this.batch =
                new StagedBatch(
                        site, number, store.read(sql -> SealReader.of(sql, site.no())), scratch);
        store.run(sql -> Lease.take(sql, site, number, person, now));
    }

    void add(FactRow row) {
        chunk.add(row);
        if (chunk.size() == CHUNK) {
            flush();
        }
    }

    private void flush() {
        if (chunk.isEmpty()) {
            return;
        }
        StagedBatch.Lines lines = batch.place(chunk);
        try {
            write(lines);
        } catch (IntegrityConstraintViolationException e) {
            // Another shell wrote to one of the jobs meanwhile and took the key: look the keys up
            // again.
            batch.forget();
            write(lines);
        }
        chunk.clear();
    }

    private void write(StagedBatch.Lines lines) {
        store.writeUnsynced(
                sql -> {
                    batch.write(sql, lines);
                    Lease.renew(sql, batch.number());
                    return true;
                });
    }

    /** Writes what is left; afterwards the stage can be posted. */
    void finish() {
        flush();
    }

    Site site() {
        return site;
    }

    StagedBatch batch() {
        return batch;
    }

    Entry post(DSLContext sql, Draft draft) {
        Lease.release(sql, batch.number());
        return batch.post(sql, draft);
    }

    /** Takes every staged row away again. */
    void discard() {
        store.run(sql -> Lease.clear(sql, batch.number()));
    }
}
