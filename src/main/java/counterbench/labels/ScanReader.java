package counterbench.labels;

import counterbench.labels.gs1.ElementReader;
import counterbench.labels.gs1.ElementString;
import counterbench.labels.gs1.Gs1Date;
import counterbench.labels.gs1.Sscc;
import counterbench.shared.Refused;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Finds out what a scan stands for. A text is taken for a GS1 label only where it shows that it is
 * one: by the prefix with which a scanner names the kind of symbol, by a separator inside, or by
 * brackets. What else is typed is left as it is, since {@code 9105} is also a reading.
 */
public final class ScanReader {
    /** GS1-128, GS1 DataMatrix, GS1 QR Code, GS1 DataBar and composite symbols. */
    private static final Set<String> GS1_PREFIXES = Set.of("]C1", "]d2", "]Q3", "]e0");

    private static final Pattern ANY_PREFIX = Pattern.compile("\\][A-Za-z][0-9A-Za-z].*");
    private static final Pattern BRACKETS = Pattern.compile("\\([0-9]{2,4}\\).*");
    private static final Pattern ENDS = Pattern.compile("^[ \\t\\r\\n]+|[ \\t\\r\\n]+$");
    private static final int PREFIX_LENGTH = 3;

    /** How a separator may be typed, or kept in a file of scans. */
    private static final String WRITTEN_SEPARATOR = "{GS}";

    private final int year;

    /**
     * @param year the year in which it is read, which tells a date's century
     */
    public ScanReader(int year) {
        this.year = year;
    }

    /**
     * What a text stands for.
     *
     * @throws Refused if it shows that it is a GS1 label, and is none or says nothing of use
     */
    public Scan read(String typed) {
        String text =
                ENDS.matcher(typed)
                        .replaceAll("")
                        .replace(WRITTEN_SEPARATOR, String.valueOf(ElementString.SEPARATOR));
        if (BRACKETS.matcher(text).matches()) {
            return meaning(text, ElementReader.bracketed(text));
        }
        if (ANY_PREFIX.matcher(text).matches()) {
            String data = text.substring(PREFIX_LENGTH);
            return GS1_PREFIXES.contains(text.substring(0, PREFIX_LENGTH))
                    ? meaning(text, ElementReader.scanned(data))
                    : new Scan.Plain(data, Optional.empty());
        }
        return text.indexOf(ElementString.SEPARATOR) >= 0
                ? meaning(text, ElementReader.scanned(text))
                : new Scan.Plain(text, unmarked(text));
    }

    private Optional<Scan> unmarked(String text) {
        try {
            return Optional.of(meaning(text, ElementReader.scanned(text)));
        } catch (Refused e) {
            return Optional.empty();
        }
    }

    /** Internal identifiers are ours only where nothing else is on the label. */
    private Scan meaning(String text, ElementString label) {
        return shippedUnit(label)
                .or(() -> goods(text, label))
                .or(() -> alone(label, Identifiers.JOB, Scan.Job::new))
                .or(() -> alone(label, Identifiers.CORE, Scan.Core::new))
                .or(() -> alone(label, Identifiers.SHIPMENT, Scan.Shipment::new))
                .orElseThrow(() -> nothing(text));
    }

    private static Optional<Scan> shippedUnit(ElementString label) {
        return label.find(Identifiers.SSCC).map(Sscc::new).map(Scan.ShippedUnit::new);
    }

    private static Optional<Scan> alone(
            ElementString label, String ai, Function<String, Scan> scan) {
        return label.elements().size() == 1 ? label.find(ai).map(scan) : Optional.empty();
    }

    private Optional<Scan> goods(String text, ElementString label) {
        Optional<String> gtin = label.find(Identifiers.GTIN);
        Optional<String> part =
                label.find(Identifiers.PART).or(() -> label.find(Identifiers.CUSTOMER_PART));
        if (gtin.isEmpty() && part.isEmpty()) {
            return Optional.empty();
        }
        Goods goods =
                new Goods(
                        gtin.orElse(null),
                        part.orElse(null),
                        label.find(Identifiers.LOT).orElse(null),
                        expiry(text, label));
        return label.find(Identifiers.SERIAL)
                .<Scan>map(serial -> new Scan.Kit(serial, goods))
                .or(() -> Optional.of(new Scan.Part(goods)));
    }

    private @Nullable LocalDate expiry(String text, ElementString label) {
        Optional<String> written = label.find(Identifiers.EXPIRY);
        if (written.isEmpty()) {
            return null;
        }
        return Gs1Date.of(written.get(), year)
                .orElseThrow(
                        () ->
                                new Refused(
                                        "scan \"" + text + "\"",
                                        "(17) " + written.get() + " is no day when read in " + year,
                                        "type the kit or part instead"));
    }

    private static Refused nothing(String text) {
        return new Refused(
                "scan \"" + text + "\"",
                "the label names no kit, part, job, core or shipment",
                "scan another label of it, or type its name");
    }
}
