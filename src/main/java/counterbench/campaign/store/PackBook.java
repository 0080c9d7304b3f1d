package counterbench.campaign.store;

import counterbench.campaign.Packs;
import counterbench.db.Store;
import counterbench.journal.store.AllPosted;

/** Reads packs, for those who know no SQL. */
public final class PackBook {
    private final Store store;

    public PackBook(Store store) {
        this.store = store;
    }

    /** Every loaded pack. */
    public Packs all() {
        return store.read(sql -> JooqPacks.all(sql, new AllPosted(sql)));
    }
}
