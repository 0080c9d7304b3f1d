package counterbench.review;

import counterbench.judgement.Finding;
import counterbench.judgement.Severity;
import counterbench.people.Role;

/** Who may settle a finding: a stop only the lead, the others whoever's work it concerns. */
public final class SettleRights {
    private SettleRights() {}

    /** The role that settles it; the lead always may. */
    public static Role roleFor(Finding finding) {
        if (finding.rule().severity() == Severity.STOP) {
            return Role.LEAD;
        }
        return switch (finding.subject().kind()) {
            case KIT, ACCOUNT, CORE, SHIPMENT -> Role.PARTS;
            case JOB -> Role.TECHNICIAN;
            case CLAIM, CREDIT -> Role.WARRANTY;
        };
    }
}
