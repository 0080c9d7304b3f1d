package counterbench.shell.counter;

import counterbench.shared.Quantity;
import counterbench.shell.Readings;
import counterbench.shell.Unreadable;
import counterbench.stock.PartQuantity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads parts with quantities, as sheets write them: {@code QM-4473:1; QM-4476:2}. */
final class MissingReading {
    private MissingReading() {}

    static List<PartQuantity> read(String text) {
        List<PartQuantity> missing = new ArrayList<>();
        Set<String> parts = new HashSet<>();
        for (String item : text.split(";", -1)) {
            PartQuantity read = item(item);
            if (!parts.add(read.part())) {
                throw new Unreadable("names " + read.part() + " twice; say the sum once");
            }
            missing.add(read);
        }
        return missing;
    }

    private static PartQuantity item(String item) {
        int colon = item.lastIndexOf(':');
        if (colon <= 0) {
            throw new Unreadable(
                    "is no list of parts and quantities; write it as \"QM-4473:1; QM-4476:2\"");
        }
        Quantity quantity = Readings.QUANTITY.read(item.substring(colon + 1));
        return new PartQuantity(Readings.TEXT.read(item.substring(0, colon)), quantity);
    }
}
