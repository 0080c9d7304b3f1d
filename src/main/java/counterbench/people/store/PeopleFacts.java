package counterbench.people.store;

import counterbench.facts.Canonical;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.people.Role;
import counterbench.shared.Site;
import counterbench.shared.units.Weight;
import java.time.Instant;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Facts about sites and people as rows. */
final class PeopleFacts {
    private PeopleFacts() {}

    static FactRow site(Site site) {
        Site.Patience patience = site.patience();
        @Nullable Weight limit = site.shipmentLimit();
        return row(
                FactKind.SITES,
                site.site(),
                site.name(),
                site.zone().getId(),
                site.currency().getCurrencyCode(),
                (long) patience.jobDays(),
                (long) patience.acknowledgementDays(),
                (long) patience.creditDays(),
                site.companyPrefix(),
                limit == null ? null : limit.amount(),
                limit == null ? null : limit.unit().symbol());
    }

    static FactRow person(String name, Collection<Role> roles) {
        return row(FactKind.PEOPLE, name, Role.listed(roles));
    }

    /** Who got a PIN, and when; never which. */
    static FactRow pin(String name, Instant at) {
        return row(FactKind.PINS, name, Canonical.cut(at));
    }

    static FactRow roles(String name, Instant at, Collection<Role> roles) {
        return row(
                FactKind.ROLE_CHANGES,
                name,
                Canonical.cut(at),
                roles.isEmpty() ? null : Role.listed(roles));
    }

    private static FactRow row(FactKind kind, @Nullable Object... values) {
        List<@Nullable Object> list = Arrays.asList(values);
        return new FactRow(kind, list, null);
    }
}
