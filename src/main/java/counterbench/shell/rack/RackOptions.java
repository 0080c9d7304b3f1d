package counterbench.shell.rack;

import counterbench.labels.Scan;
import counterbench.labels.ScanReader;
import counterbench.shared.Refused;
import counterbench.shell.Argument;
import counterbench.shell.Reading;
import counterbench.shell.Readings;
import counterbench.shell.Unreadable;

/** What the commands of the rack take, typed or scanned. */
final class RackOptions {
    /** Labels of cores and shipments bear no dates, so no year tells anything of them. */
    private static final ScanReader LABELS = new ScanReader(2000);

    /** A core's tag, or the text of its label. */
    static final Reading<String> CORE =
            text -> scanned(text) instanceof Scan.Core core ? core.tag() : plain(text, "core");

    /** A shipment's name, or the text of its label. */
    static final Reading<String> SHIPMENT_NAME =
            text ->
                    scanned(text) instanceof Scan.Shipment shipment
                            ? shipment.shipment()
                            : plain(text, "shipment");

    static final Argument<String> TAG = Argument.of("TAG", CORE, "the core's tag");

    static final Argument<String> TAGS =
            Argument.of("CORE", CORE, "tags of cores, or scans of their labels").asRepeatable();

    static final Argument<String> SHIPMENT =
            Argument.of("SHIPMENT", SHIPMENT_NAME, "the shipment's name");

    private RackOptions() {}

    private static Scan scanned(String text) {
        try {
            return LABELS.read(text);
        } catch (Refused e) {
            throw new Unreadable("is no label that means anything here; type the name instead");
        }
    }

    private static String plain(String text, String wanted) {
        if (scanned(text) instanceof Scan.Plain) {
            return Readings.TEXT.read(text);
        }
        throw new Unreadable("is no label of a " + wanted + "; scan that, or type the name");
    }
}
