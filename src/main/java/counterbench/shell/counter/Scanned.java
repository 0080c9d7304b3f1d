package counterbench.shell.counter;

import counterbench.labels.Scan;
import counterbench.labels.ScanReader;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shared.Visible;
import counterbench.shell.Invocation;
import counterbench.shell.Reading;
import counterbench.shell.Unreadable;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What somebody typed or scanned: a name, or the text of a label. */
public final class Scanned {
    /** A label's text may hold separators that are control characters. */
    public static final Reading<String> TEXT =
            text -> {
                if (text.isBlank()) {
                    throw new Unreadable("is empty; type the name or scan the label");
                }
                return text;
            };

    private Scanned() {}

    /** The label's text as it was meant; a scanner's prefix may be missing. */
    static Scan of(Invocation in, Site site, String text) {
        Scan scan = new ScanReader(site.dayOf(in.now()).getYear()).read(text);
        if (scan instanceof Scan.Plain plain) {
            return plain.unmarked().filter(Scanned::isOfGoods).orElse(plain);
        }
        return scan;
    }

    private static boolean isOfGoods(Scan scan) {
        return scan instanceof Scan.Kit || scan instanceof Scan.Part;
    }

    /** The serial of a kit. */
    public static String kit(Invocation in, Site site, String text) {
        Scan scan = of(in, site, text);
        return scan instanceof Scan.Kit kit ? kit.serial() : plain(scan, text, "kit");
    }

    /** The serials of the kits on the line. */
    static List<String> kits(Invocation in, Site site) {
        return in.all(CounterOptions.KITS).stream().map(text -> kit(in, site, text)).toList();
    }

    /** The part number of loose parts on the line. */
    static String part(Invocation in, Site site) {
        return part(in, site, in.get(CounterOptions.PART));
    }

    /** The lot that the line names, or else the part's label. */
    static @Nullable String lot(Invocation in, Site site) {
        return in.find(CounterOptions.LOT)
                .or(() -> lot(in, site, in.get(CounterOptions.PART)))
                .orElse(null);
    }

    /** The part number of loose parts. */
    public static String part(Invocation in, Site site, String text) {
        Scan scan = of(in, site, text);
        if (scan instanceof Scan.Part part) {
            return part.goods()
                    .partNumber()
                    .orElseThrow(
                            () ->
                                    new Refused(
                                            "scan \"" + text + "\"",
                                            "the label does not say the part number",
                                            "type it"));
        }
        return plain(scan, text, "part");
    }

    /** The name of a job. */
    public static String job(Invocation in, Site site, String text) {
        Scan scan = of(in, site, text);
        return scan instanceof Scan.Job job ? job.job() : plain(scan, text, "job");
    }

    /** The last usable day on the part's label, if it is one and says so. */
    static Optional<LocalDate> expiry(Invocation in, Site site) {
        return of(in, site, in.get(CounterOptions.PART)) instanceof Scan.Part part
                ? Optional.ofNullable(part.goods().expiresOn())
                : Optional.empty();
    }

    /** The lot on a part's label, if it is one and says so. */
    public static Optional<String> lot(Invocation in, Site site, String text) {
        return of(in, site, text) instanceof Scan.Part part
                ? Optional.ofNullable(part.goods().lot())
                : Optional.empty();
    }

    private static String plain(Scan scan, String text, String wanted) {
        if (!(scan instanceof Scan.Plain plain)) {
            throw new Refused(
                    "scan \"" + text + "\"",
                    "this is no label of a " + wanted,
                    "scan the " + wanted + "'s label, or type its name");
        }
        String name = plain.text().strip();
        if (name.isEmpty() || !Visible.text(name).equals(name) || name.indexOf('\n') >= 0) {
            throw new Refused(
                    wanted + " \"" + text + "\"",
                    "it holds a line end or a control character",
                    "type it again");
        }
        return name;
    }
}
