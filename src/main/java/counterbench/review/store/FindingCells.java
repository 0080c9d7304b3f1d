package counterbench.review.store;

import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A finding as the cells of a row that may lie in a file for a while. */
final class FindingCells {
    private FindingCells() {}

    /** To which further cells may be added. */
    static Map<String, @Nullable Object> of(Finding finding) {
        Subject subject = finding.subject();
        Map<String, @Nullable Object> cells = new HashMap<>();
        cells.put("rule", finding.rule().name());
        cells.put("site", finding.site());
        cells.put("campaign", finding.campaign());
        cells.put("subject_kind", subject.kind().name());
        cells.put("subject", subject.name());
        cells.put("part", subject.part());
        cells.put("step", subject.step());
        cells.put("month", finding.month() == null ? null : finding.month().toString());
        cells.put("message", finding.message());
        cells.put("evidence", finding.evidence());
        return cells;
    }

    static Finding finding(Map<String, ? extends @Nullable Object> cells) {
        @Nullable String month = (String) cells.get("month");
        return new Finding(
                Rule.valueOf(text(cells, "rule")),
                text(cells, "site"),
                (String) cells.get("campaign"),
                new Subject(
                        SubjectKind.valueOf(text(cells, "subject_kind")),
                        text(cells, "subject"),
                        (String) cells.get("part"),
                        (String) cells.get("step")),
                month == null ? null : YearMonth.parse(month),
                text(cells, "message"),
                text(cells, "evidence"));
    }

    private static String text(Map<String, ? extends @Nullable Object> cells, String field) {
        return String.valueOf(cells.get(field));
    }
}
