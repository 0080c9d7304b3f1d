package counterbench.shell.review;

import counterbench.judgement.Finding;
import counterbench.judgement.Subject;
import counterbench.review.FindingState;
import counterbench.review.StatedFinding;
import counterbench.review.store.SortedFindings;
import counterbench.shell.Invocation;
import counterbench.shell.Options;
import counterbench.shell.print.Column;
import counterbench.shell.print.Format;
import counterbench.shell.print.Rows;

/** Writes findings: short for people, whole for programs. */
final class FindingRows {
    private FindingRows() {}

    static void write(Invocation in, SortedFindings findings) {
        if (in.find(Options.FORMAT).orElse(Format.TABLE) == Format.TABLE) {
            forPeople(in, findings);
        } else {
            forPrograms(in, findings);
        }
    }

    private static void forPeople(Invocation in, SortedFindings findings) {
        try (Rows rows =
                in.rows(
                        Column.text("finding"),
                        Column.text("severity"),
                        Column.text("rule"),
                        Column.text("subject"),
                        Column.text("message"))) {
            findings.each(stated -> addForPeople(rows, stated));
        }
    }

    private static void addForPeople(Rows rows, StatedFinding stated) {
        Finding finding = stated.finding();
        rows.add(
                stated.id(),
                severity(stated),
                finding.rule().word(),
                subject(finding.subject()),
                finding.message());
    }

    private static String severity(StatedFinding stated) {
        String word = stated.finding().rule().severity().word();
        return stated.state() == FindingState.SETTLED ? word + ", settled" : word;
    }

    /** A subject as people say it: {@code job J-118, part QM-4473}. */
    static String subject(Subject subject) {
        String part = subject.part() == null ? "" : ", part " + subject.part();
        String step = subject.step() == null ? "" : ", step " + subject.step();
        return subject.kind().word() + " " + subject.name() + part + step;
    }

    private static void forPrograms(Invocation in, SortedFindings findings) {
        try (Rows rows =
                in.rows(
                        Column.text("rule"),
                        Column.text("severity"),
                        Column.text("site"),
                        Column.text("campaign"),
                        Column.text("subject_kind"),
                        Column.text("subject"),
                        Column.text("part"),
                        Column.text("step"),
                        Column.text("month"),
                        Column.text("message"),
                        Column.text("evidence"),
                        Column.text("state"))) {
            findings.each(stated -> add(rows, stated));
        }
    }

    private static void add(Rows rows, StatedFinding stated) {
        Finding finding = stated.finding();
        Subject subject = finding.subject();
        rows.add(
                finding.rule().word(),
                finding.rule().severity().word(),
                finding.site(),
                finding.campaign(),
                subject.kind().word(),
                subject.name(),
                subject.part(),
                subject.step(),
                finding.month(),
                finding.message(),
                finding.evidence(),
                stated.state().word());
    }
}
