package counterbench.shell.labels;

import counterbench.db.Store;
import counterbench.printing.Printer;
import counterbench.shell.SiteChoice;
import java.util.function.Supplier;

/**
 * What commands need to print labels.
 *
 * @param store where the things are, that labels are put on
 * @param printer draws the sheets; made only for that, as its libraries are large
 */
public record LabelPress(Supplier<Store> store, SiteChoice sites, Supplier<Printer> printer) {}
