package counterbench.month.sheet;

import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Severity;
import counterbench.review.FindingState;
import counterbench.review.Settlement;
import counterbench.spool.SpooledRows;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** The findings of the month that a workbook is about, the gravest first. */
final class FindingsSheet {
    private final Predicate<Finding> wanted;
    private final SpooledRows rows;

    FindingsSheet(Predicate<Finding> wanted, SpooledRows rows) {
        this.wanted = wanted;
        this.rows = rows;
    }

    /**
     * Adds a finding of the month, if the workbook is about it.
     *
     * @param settled how it was settled; null where it is open
     */
    void add(Finding finding, @Nullable Settlement settled) {
        if (!wanted.test(finding)) {
            return;
        }
        FindingState state = settled == null ? FindingState.OPEN : FindingState.SETTLED;
        RowOf row =
                new RowOf()
                        .with("severity", finding.rule().severity().word())
                        .with("rule", finding.rule().word())
                        .with("campaign", finding.campaign())
                        .with("subject_kind", finding.subject().kind().word())
                        .with("subject", finding.subject().name())
                        .with("part", finding.subject().part())
                        .with("step", finding.subject().step())
                        .with("message", finding.message())
                        .with("state", state.word());
        if (settled != null) {
            row.with("settled_by", settled.person())
                    .with("settled_at", settled.at())
                    .with("reason", settled.reason());
        }
        rows.add(
                List.of(
                        Arrays.asList(Severity.values()).indexOf(finding.rule().severity()),
                        Arrays.asList(Rule.values()).indexOf(finding.rule()),
                        finding.subject().name()),
                row.values());
    }
}
