package counterbench.intake;

import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Checks rows of {@code issues} and {@code uses}. */
final class HardwareCheck {
    private HardwareCheck() {}

    static void check(FactRow row, Names names, Complaints complaints) {
        RowCheck.positive(row, "quantity", complaints);
        if (row.kind() == FactKind.ISSUES) {
            checkIssue(row, complaints);
        } else {
            checkTakenOff(row, complaints);
            checkCore(row, names, complaints);
        }
    }

    private static void checkIssue(FactRow row, Complaints complaints) {
        boolean kit = row.text("kit") != null;
        boolean part = row.text("part") != null;
        if (kit && part) {
            complaints.of("part", "a kit is issued whole", "leave the part out, or the kit");
        } else if (complaints.isEmpty("kit") && complaints.isEmpty("part")) {
            complaints.ofRow(
                    "names neither a kit nor a part", "say which kit, or which part and how much");
        } else if (part) {
            RowCheck.needed(row, "quantity", "say how much of the part was issued", complaints);
        }
    }

    private static void checkTakenOff(FactRow row, Complaints complaints) {
        boolean takenOff = "taken-off".equals(row.text("condition"));
        if (takenOff) {
            RowCheck.needed(row, "was", "say whether it had been fitted new or reused", complaints);
        } else if (row.text("was") != null && !complaints.isUnread("condition")) {
            complaints.of("was", "belongs to taken-off rows only", "leave it empty");
        }
    }

    private static void checkCore(FactRow row, Names names, Complaints complaints) {
        @Nullable String job = row.text("job");
        @Nullable String core = row.text("core");
        if (job == null) {
            return;
        }
        if (core == null) {
            if ("on-core".equals(row.text("condition")) && names.coresOf(job) > 1) {
                complaints.of("core", "the job has " + names.coresOf(job) + " cores", "say which");
            }
            return;
        }
        Optional<String> jobOfCore = names.jobOfCore(core);
        if (jobOfCore.isEmpty()) {
            complaints.of("core", "no core of that tag was removed", "record its removal first");
        } else if (!jobOfCore.get().equals(job)) {
            complaints.of(
                    "core", "it was removed on job " + jobOfCore.get(), "correct job or core");
        }
    }
}
