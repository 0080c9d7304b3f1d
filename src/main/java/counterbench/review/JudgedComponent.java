package counterbench.review;

import counterbench.judgement.Finding;
import counterbench.stock.Ledger;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the rules say of a component.
 *
 * @param findings findings by job, in the order of the component's jobs
 * @param ofKits findings about its kits
 * @param changesAt the moment at which the clock alone, or a fact that lies ahead, changes the
 *     outcome
 * @param doubtfulShipments shipments of which the return centre names something that may not be on
 *     them
 */
public record JudgedComponent(
        Component component,
        Ledger ledger,
        Map<String, List<Finding>> findings,
        List<Finding> ofKits,
        Optional<Instant> changesAt,
        Set<String> doubtfulShipments) {}
