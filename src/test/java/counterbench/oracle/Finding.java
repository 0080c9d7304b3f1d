package counterbench.oracle;

import java.util.Comparator;
import java.util.Map;

/**
 * One judgement. Texts that do not apply are empty; {@code why} is for the reader of a failed
 * comparison only.
 */
public record Finding(
        String rule,
        String severity,
        String site,
        String campaign,
        String subjectKind,
        String subject,
        String part,
        String step,
        String month,
        String why) {

    /** By rule, subject, part, step. */
    public static final Comparator<Finding> ORDER =
            Comparator.comparing(Finding::rule)
                    .thenComparing(Finding::subjectKind)
                    .thenComparing(Finding::subject)
                    .thenComparing(Finding::part)
                    .thenComparing(Finding::step);

    /** Severity of every rule, as the table of rules has it. */
    public static final Map<String, String> SEVERITIES = severities();

    /** What identifies it, and its month, in one line. */
    public String line() {
        return String.join(
                "|", rule, severity, site, campaign, subjectKind, subject, part, step, month);
    }

    private static Map<String, String> severities() {
        Map<String, String> all = new java.util.TreeMap<>();
        put(all, "stop", "reused-hardware hardware-short matched-set-split expired-when-used");
        put(all, "stop", "step-missing torque-count torque-outside reading-outside wait-short");
        put(all, "stop", "core-missing drain-not-logged drain-short plugs-short core-rejected");
        put(all, "stop", "vehicle-not-listed vehicle-done-twice claimed-twice claim-ungrounded");
        put(all, "fix", "hardware-over kit-unknown kit-of-another-job left-on-bench step-early");
        put(all, "fix", "condition-unknown instrument-overdue core-packaging core-overdue");
        put(all, "fix", "core-serial-twice acknowledgement-stray vin-invalid claimed-late");
        put(all, "fix", "paid-differently credit-unmatched balance-negative count-difference");
        put(all, "fix", "kit-incomplete");
        put(all, "note", "job-idle step-not-for-vehicle torque-borderline core-unacknowledged");
        put(all, "note", "claim-unpaid");
        return Map.copyOf(all);
    }

    private static void put(Map<String, String> all, String severity, String rules) {
        for (String rule : rules.split(" ", -1)) {
            all.put(rule, severity);
        }
    }
}
