package counterbench.labels;

import counterbench.labels.gs1.Element;
import counterbench.labels.gs1.ElementString;
import counterbench.labels.gs1.Gs1Date;
import counterbench.labels.gs1.Sscc;
import counterbench.shared.Refused;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Builds what the symbol of a label of ours says, element by element. */
public final class LabelContent {
    private final String subject;
    private final List<Element> elements = new ArrayList<>();

    private LabelContent(String subject) {
        this.subject = subject;
    }

    /** A kit's. */
    public static ElementString ofKit(String serial, Goods goods) {
        return new LabelContent("kit \"" + serial + "\"")
                .goods(goods)
                .add(Identifiers.SERIAL, serial)
                .add(Identifiers.LOT, goods.lot())
                .whole();
    }

    /** A part's. */
    public static ElementString ofPart(Goods goods) {
        return new LabelContent("part \"" + goods.partNumber().orElse("") + "\"")
                .goods(goods)
                .add(Identifiers.LOT, goods.lot())
                .whole();
    }

    /** A job's. */
    public static ElementString ofJob(String job) {
        return new LabelContent("job \"" + job + "\"").add(Identifiers.JOB, job).whole();
    }

    /** A core's. */
    public static ElementString ofCore(String tag) {
        return new LabelContent("core \"" + tag + "\"").add(Identifiers.CORE, tag).whole();
    }

    /** A shipment's, by its number if it has one, or else by its name. */
    public static ElementString ofShipment(String shipment, @Nullable Sscc sscc) {
        LabelContent content = new LabelContent("shipment \"" + shipment + "\"");
        return sscc == null
                ? content.add(Identifiers.SHIPMENT, shipment).whole()
                : content.add(Identifiers.SSCC, sscc.digits()).whole();
    }

    /** Those of one length for ever come first, so that they need no separator. */
    private LabelContent goods(Goods goods) {
        LocalDate expiresOn = goods.expiresOn();
        return add(Identifiers.GTIN, goods.gtin())
                .add(Identifiers.EXPIRY, expiresOn == null ? null : Gs1Date.written(expiresOn))
                .add(Identifiers.PART, goods.part());
    }

    private LabelContent add(String ai, @Nullable String value) {
        if (value != null) {
            Optional<String> fault = Element.faultOf(ai, value);
            if (fault.isPresent()) {
                throw new Refused(
                        "a label of " + subject,
                        fault.get(),
                        "write it by hand; GS1 symbols take neither blanks nor letters other than"
                                + " A to Z and a to z");
            }
            elements.add(new Element(ai, value));
        }
        return this;
    }

    private ElementString whole() {
        return new ElementString(elements);
    }
}
