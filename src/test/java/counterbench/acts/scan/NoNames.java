package counterbench.acts.scan;

import counterbench.acts.CoreAway;
import counterbench.acts.Directory;
import counterbench.acts.KitListing;
import counterbench.acts.Shipment;
import counterbench.acts.UnderWay;
import counterbench.claims.draft.Rate;
import counterbench.cores.Acknowledgement;
import counterbench.review.Settlements;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** A site that has nothing besides what an act names. */
final class NoNames implements Directory {
    @Override
    public Collection<String> jobs() {
        return List.of();
    }

    @Override
    public Collection<String> kits() {
        return List.of();
    }

    @Override
    public Collection<String> cores() {
        return List.of();
    }

    @Override
    public Collection<String> otherSites() {
        return List.of();
    }

    @Override
    public List<KitListing> kitsOnShelf(String kitPart) {
        return List.of();
    }

    @Override
    public Collection<String> shipments() {
        return List.of();
    }

    @Override
    public Optional<Shipment> shipment(String shipment) {
        return Optional.empty();
    }

    @Override
    public List<Acknowledgement> acknowledgements(String shipment) {
        return List.of();
    }

    @Override
    public Collection<String> claims() {
        return List.of();
    }

    @Override
    public List<Rate> rates() {
        return List.of();
    }

    @Override
    public Optional<BigDecimal> costElsewhere(String part, Instant by) {
        return Optional.empty();
    }

    @Override
    public Collection<String> matchedCredits() {
        return List.of();
    }

    @Override
    public Settlements settlements() {
        return new Settlements(List.of());
    }

    @Override
    public UnderWay underWay() {
        throw new AssertionError("nothing at a bench asks what is under way");
    }

    @Override
    public Collection<CoreAway> coresAway() {
        return List.of();
    }
}
