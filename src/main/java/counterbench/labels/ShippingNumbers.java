package counterbench.labels;

import counterbench.labels.gs1.CompanyPrefix;
import counterbench.labels.gs1.Sscc;
import counterbench.shared.Refused;
import java.util.Optional;

/**
 * Numbers a site's shipments. A number follows from the site and from the shipment's place among
 * those that its journal names, so it is the same whenever it is printed, and differs between sites
 * of one company prefix.
 */
public final class ShippingNumbers {
    /** One more than the greatest number that a site can have. */
    private static final long SITES = 1024;

    private final CompanyPrefix prefix;
    private final int siteNo;

    public ShippingNumbers(CompanyPrefix prefix, int siteNo) {
        this.prefix = prefix;
        this.siteNo = siteNo;
    }

    /** The place of the shipment that has a number; empty if the site gives no such number. */
    public Optional<Long> placeOf(Sscc sscc) {
        if (!sscc.digits().startsWith(prefix.digits(), 1)) {
            return Optional.empty();
        }
        long number = sscc.extension() * Sscc.serials(prefix) + sscc.serial(prefix);
        return number % SITES == siteNo ? Optional.of(number / SITES) : Optional.empty();
    }

    /**
     * The number of the shipment at a place, from 0.
     *
     * @throws Refused if the prefix leaves no more
     */
    public Sscc of(long place) {
        long number = place * SITES + siteNo;
        long serials = Sscc.serials(prefix);
        long extension = number / serials;
        if (extension > 9) {
            throw new Refused(
                    "an SSCC for shipment number " + (place + 1) + " of the site",
                    "company prefix " + prefix.digits() + " leaves no more",
                    "ask GS1 for a shorter one");
        }
        return Sscc.of(prefix, (int) extension, number % serials);
    }
}
