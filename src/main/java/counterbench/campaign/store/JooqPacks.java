package counterbench.campaign.store;

import static counterbench.db.generated.Tables.PACKS_FACT;

import counterbench.campaign.Pack;
import counterbench.campaign.Packs;
import counterbench.campaign.yaml.PackReader;
import counterbench.journal.store.AllPosted;
import java.util.ArrayList;
import java.util.List;
import org.jooq.DSLContext;

/** Loaded packs: kept as the text that was loaded, and read again from it. */
public final class JooqPacks {
    private JooqPacks() {}

    /** Every loaded pack of the store. */
    public static Packs all(DSLContext sql, AllPosted posted) {
        List<Pack> packs = new ArrayList<>();
        sql.selectFrom(PACKS_FACT)
                .orderBy(PACKS_FACT.BATCH, PACKS_FACT.LINE)
                .forEach(
                        r -> {
                            if (posted.counts(r.getSiteNo(), r.getBatch(), r.getLine())) {
                                packs.add(read(r.getText(), r.getFileName()));
                            }
                        });
        return new Packs(packs);
    }

    private static Pack read(String text, String file) {
        return PackReader.read(text, file).packOrRefuse();
    }
}
