package counterbench.acts.rack;

import counterbench.acts.CoreCase;
import counterbench.claims.Credit;
import counterbench.claims.CreditFacts;
import counterbench.shared.Site;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Core credits, which clear core charges: those of a job's claims, and those that name no claim.
 */
public final class CoreCredits {
    private final Site site;
    private final Map<String, List<Credit>> ofNoClaim = new HashMap<>();

    public CoreCredits(Site site) {
        this.site = site;
    }

    /** Takes a credit that belongs to no claim. */
    public void add(CreditFacts credit) {
        if (credit.core() != null && credit.credit().kind() == Credit.Kind.CORE) {
            ofNoClaim
                    .computeIfAbsent(credit.core(), core -> new ArrayList<>())
                    .add(credit.credit());
        }
    }

    /** The credits for a core. */
    public List<Credit> of(CoreCase core) {
        return Stream.concat(
                        ofNoClaim.getOrDefault(core.core().core(), List.of()).stream(),
                        core.job().coreCredits(core.core()).stream())
                .toList();
    }

    /** When a core was credited: the last day of its core credits, where they come to something. */
    public Optional<Instant> creditedAt(CoreCase core) {
        List<Credit> paid = of(core);
        BigDecimal sum = paid.stream().map(Credit::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
        return sum.signum() > 0
                ? paid.stream()
                        .map(Credit::paidOn)
                        .max(Comparator.naturalOrder())
                        .map(site::startOf)
                : Optional.empty();
    }
}
