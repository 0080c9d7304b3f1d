package counterbench.cores;

import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Site;
import java.util.List;
import java.util.Objects;

/**
 * What the rules read about one shipment.
 *
 * @param shipment the shipment that the return centre names, known or not
 * @param cores the cores that are on it
 * @param acknowledgements the return centre's rows for it
 */
public record ShipmentFacts(
        Site site,
        String shipment,
        List<CoreHistory> cores,
        List<Acknowledgement> acknowledgements) {
    public ShipmentFacts {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(shipment, "shipment");
        cores = List.copyOf(cores);
        acknowledgements = List.copyOf(acknowledgements);
    }

    /** A finding on the shipment; it belongs to no campaign and no month. */
    public Finding finding(Rule rule, String message, String evidence) {
        return new Finding(
                rule,
                site.site(),
                null,
                Subject.of(SubjectKind.SHIPMENT, shipment),
                null,
                "shipment " + shipment + ": " + message,
                evidence);
    }
}
