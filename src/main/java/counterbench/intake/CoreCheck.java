package counterbench.intake;

import counterbench.facts.FactRow;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Checks rows of {@code cores}. */
final class CoreCheck {
    private CoreCheck() {}

    static void check(FactRow row, Names names, Complaints complaints) {
        @Nullable String event = row.text("event");
        if (event != null) {
            checkEvent(row, event, complaints);
            checkSite(row, event, complaints);
        }
        checkRemoval(row, event, names, complaints);
    }

    private static void checkEvent(FactRow row, String event, Complaints complaints) {
        switch (event) {
            case "removed" -> {
                RowCheck.needed(row, "job", "say on which job it was removed", complaints);
                RowCheck.needed(row, "serial", "write the serial of the unit", complaints);
            }
            case "plugged", "unplugged" -> {
                RowCheck.needed(row, "quantity", "write how many plugs", complaints);
                checkPlugs(row, complaints);
            }
            case "added", "taken-off" ->
                    RowCheck.needed(row, "shipment", "say which shipment", complaints);
            case "sent", "arrived" ->
                    RowCheck.needed(row, "other_site", "say which site", complaints);
            default -> {
                // Nothing more is needed.
            }
        }
    }

    private static void checkSite(FactRow row, String event, Complaints complaints) {
        boolean travels = event.equals("sent") || event.equals("arrived");
        if (!travels && row.text("other_site") != null) {
            complaints.of("other_site", "belongs to sent and arrived rows only", "leave it empty");
        }
    }

    private static void checkPlugs(FactRow row, Complaints complaints) {
        @Nullable BigDecimal plugs = row.decimal("quantity");
        if (plugs != null && (plugs.signum() <= 0 || plugs.stripTrailingZeros().scale() > 0)) {
            complaints.of("quantity", "is no number of plugs", "write a whole number above zero");
        }
    }

    private static void checkRemoval(
            FactRow row, @Nullable String event, Names names, Complaints complaints) {
        @Nullable String core = row.text("core");
        if (core == null) {
            return;
        }
        Optional<String> removedOn = names.jobOfCore(core);
        @Nullable String job = row.text("job");
        if (removedOn.isEmpty() && event != null && !event.equals("removed")) {
            complaints.of(
                    "core",
                    "no core of that tag was removed",
                    "correct the tag, or add its removal to the sheet");
        } else if (removedOn.isPresent() && job != null && !removedOn.get().equals(job)) {
            complaints.of(
                    "job",
                    "core " + core + " was removed on job " + removedOn.get(),
                    "correct the job, or give the core a tag of its own");
        }
    }
}
