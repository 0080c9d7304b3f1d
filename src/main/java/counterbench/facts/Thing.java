package counterbench.facts;

import java.util.Locale;

/** What sort of thing a fact names of which a rule may judge otherwise. */
public enum Thing {
    JOB,
    KIT,
    PART,
    VIN,
    CORE,
    SERIAL,
    SHIPMENT,
    CLAIM,
    CREDIT;

    /** As the store writes it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
