package counterbench.intake;

import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import java.math.BigDecimal;
import java.util.SortedSet;
import org.jspecify.annotations.Nullable;

/** Checks rows of {@code kits}, {@code receipts}, {@code moves} and {@code counts}. */
final class StockCheck {
    private StockCheck() {}

    static void check(FactRow row, Names names, Complaints complaints) {
        if (row.kind() == FactKind.KITS) {
            checkMissing(row, names, complaints);
            checkRevision(row, names, complaints);
        } else if (row.kind() == FactKind.COUNTS) {
            checkCount(row, complaints);
        } else {
            RowCheck.positive(row, "quantity", complaints);
        }
        if (row.kind() == FactKind.MOVES) {
            checkMove(row, complaints);
        }
    }

    private static void checkMissing(FactRow row, Names names, Complaints complaints) {
        @Nullable String missing = row.text("missing");
        if (missing == null) {
            return;
        }
        for (String item : missing.split("; ", -1)) {
            int colon = item.lastIndexOf(':');
            String part = item.substring(0, colon);
            if (!names.isPart(part)) {
                complaints.of(
                        "missing",
                        "no loaded pack and no list of parts names " + part,
                        "correct the part number");
            } else if (RowCheck.isBroken(part, new BigDecimal(item.substring(colon + 1)), names)) {
                complaints.of(
                        "missing",
                        "has no whole number of " + part + ", which is counted in pieces",
                        "write how many pieces");
            }
        }
    }

    /** A kit of a revision that nobody knows would hold nothing. */
    private static void checkRevision(FactRow row, Names names, Complaints complaints) {
        @Nullable String kitPart = row.text("kit_part");
        @Nullable String revision = row.text("revision");
        if (kitPart == null || revision == null) {
            return;
        }
        SortedSet<String> known = names.revisionsOfKit(kitPart);
        if (!known.isEmpty() && !known.contains(revision)) {
            complaints.of(
                    "revision",
                    "no loaded pack of that revision has " + kitPart,
                    "write "
                            + String.join(" or ", known)
                            + ", or leave it empty: the terms of the day of receipt hold then");
        }
    }

    private static void checkCount(FactRow row, Complaints complaints) {
        boolean kit = row.text("kit") != null;
        boolean part = row.text("part") != null;
        boolean neither = complaints.isEmpty("kit") && complaints.isEmpty("part");
        if (neither || (kit && part)) {
            complaints.ofRow("must name either a part or a kit", "say what was counted, once");
        }
        @Nullable BigDecimal quantity = row.decimal("quantity");
        if (kit && quantity != null && !isOneOrNone(quantity)) {
            complaints.of("quantity", "a kit is there or not", "write 1 or 0");
        }
    }

    private static boolean isOneOrNone(BigDecimal quantity) {
        return quantity.compareTo(BigDecimal.ONE) == 0 || quantity.signum() == 0;
    }

    private static void checkMove(FactRow row, Complaints complaints) {
        @Nullable String event = row.text("event");
        if (complaints.isEmpty("kit") && complaints.isEmpty("part")) {
            complaints.ofRow("names neither a kit nor a part", "say what was moved");
        }
        if (row.text("part") != null) {
            RowCheck.needed(row, "quantity", "say how much of the part", complaints);
        }
        if ("short".equals(event)) {
            RowCheck.needed(row, "kit", "say which kit came short", complaints);
            RowCheck.needed(row, "part", "say which part was missing", complaints);
        }
        if ("sent".equals(event) || "arrived".equals(event)) {
            RowCheck.needed(row, "other_site", "say which site", complaints);
        }
    }
}
