package counterbench.labels;

import counterbench.labels.gs1.Sscc;
import java.util.Optional;

/** What a scanned or typed text stands for. {@link ScanReader} finds out. */
public sealed interface Scan {
    /** A kit, by its serial number. */
    record Kit(String serial, Goods goods) implements Scan {}

    /** Some of a part. */
    record Part(Goods goods) implements Scan {}

    /** A job, by its name. */
    record Job(String job) implements Scan {}

    /** A core, by its tag. */
    record Core(String tag) implements Scan {}

    /** A shipment, by its name. */
    record Shipment(String shipment) implements Scan {}

    /** A shipped unit, by its number; which shipment that is, the site's shipments tell. */
    record ShippedUnit(Sscc sscc) implements Scan {}

    /**
     * No label of GS1's form: a name, a reading or a word that somebody typed, or a symbol of
     * another kind.
     *
     * @param unmarked what it would be if it came from a scanner that sends no prefix; to be asked
     *     only where the text itself is not known as anything
     */
    record Plain(String text, Optional<Scan> unmarked) implements Scan {}
}
