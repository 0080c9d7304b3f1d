package counterbench.acts.store;

import counterbench.acts.Named;
import counterbench.acts.ShipmentState;
import counterbench.acts.rack.BoardLine;
import counterbench.acts.rack.Proposal;
import counterbench.db.Store;
import counterbench.review.store.FindingBook;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.List;
import java.util.function.LongConsumer;

/** Looks up the cores that may go onto a shipment. */
public final class ProposeCores {
    private final Store store;

    public ProposeCores(Store store) {
        this.store = store;
    }

    /**
     * Those to propose, the oldest deadline first.
     *
     * @throws counterbench.shared.Refused if there is no such shipment
     */
    public List<BoardLine> to(String shipment, Site site, Instant now, LongConsumer progress) {
        Named named = Named.NOTHING.withShipment(shipment);
        ShipmentState to = new ReadSituation(store).run(site, now, named).shipment(shipment);
        List<BoardLine> board =
                new ReadRack(store, site, now)
                        .undecided(
                                new FindingBook(store)
                                        .now(site, now, ReadRack::isOfCores, progress),
                                jobs -> {});
        return Proposal.of(board, to, yardOf(to, site), site.shipmentLimit());
    }

    /** Where the cores on it lie; the site's own yard while it is empty. */
    private static String yardOf(ShipmentState shipment, Site site) {
        return shipment.cores().stream()
                .map(core -> core.where().site())
                .findFirst()
                .orElse(site.site());
    }
}
