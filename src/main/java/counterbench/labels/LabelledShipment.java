package counterbench.labels;

import counterbench.labels.gs1.Sscc;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A shipment of cores.
 *
 * @param sscc its number, where the site has a company prefix
 */
public record LabelledShipment(
        String site, String shipment, String carrier, String tracking, @Nullable Sscc sscc)
        implements Labelled {
    private static final List<String> CAUTIONS =
            List.of("Rules for fuel-wetted parts are the shipper's to check.");

    @Override
    public Label label() {
        return new Label(
                "shipment " + shipment,
                new LabelLines()
                        .addAlone(carrier)
                        .add("tracking", tracking)
                        .add("SSCC", sscc == null ? null : sscc.digits())
                        .add("from", site)
                        .all(),
                CAUTIONS,
                LabelContent.ofShipment(shipment, sscc));
    }
}
