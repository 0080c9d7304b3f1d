package counterbench.care.store;

import counterbench.db.Store;
import counterbench.journal.store.Verification;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.Optional;

/**
 * Verifies a site's journal: that its chain of hashes holds, that what its facts name is there and
 * lies where it is looked for, and that the sum of every part over all accounts is zero.
 */
public final class VerifyJournal {
    private final Store store;

    public VerifyJournal(Store store) {
        this.store = store;
    }

    /**
     * Verifies it.
     *
     * @param now the time as of which balances are taken
     */
    public Verification.Outcome run(Site site, Instant now) {
        Verification.Outcome chain = store.readSnapshot(sql -> Verification.of(sql, site));
        if (chain.broken().isPresent()) {
            return chain;
        }
        Optional<Verification.Broken> broken =
                store.readSnapshot(sql -> References.firstBroken(sql, site))
                        .or(() -> SumsOfParts.firstBroken(store, site, now));
        return new Verification.Outcome(
                broken.map(b -> b.number() - 1).orElse(chain.entries()),
                chain.facts(),
                chain.lastHash(),
                broken);
    }
}
