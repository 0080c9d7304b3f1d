package counterbench.shell.intake;

import counterbench.intake.ImportReport;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import counterbench.sheets.MarkedCopy;
import counterbench.sheets.RowPosition;
import counterbench.sheets.RowProblem;
import counterbench.sheets.SheetFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Tells a person which rows were refused: the first ones at once, all of them in a marked copy. */
public final class RefusedRows {
    private static final int SHOWN = 50;

    private final String asked;
    private final ImportReport report;
    private final Map<RowPosition, List<RowProblem>> byRow;

    private RefusedRows(String asked, ImportReport report) {
        this.asked = asked;
        this.report = report;
        this.byRow =
                report.problems().stream()
                        .collect(
                                Collectors.groupingBy(
                                        RowProblem::at,
                                        () -> new TreeMap<>(RowPosition.IN_FILES),
                                        Collectors.toList()));
    }

    /** The refusal of an import, without a copy. */
    public static Refused refusal(String asked, ImportReport report) {
        return new RefusedRows(asked, report).refused("mend the rows, then try again");
    }

    /** The refusal of an import, with a marked copy in a folder. */
    static Refused refusal(String asked, ImportReport report, SheetFiles files, Path folder) {
        RefusedRows rows = new RefusedRows(asked, report);
        return rows.refused(rows.copied(files, folder));
    }

    private Refused refused(String todo) {
        List<Problem> problems = new ArrayList<>();
        byRow.values().stream()
                .limit(SHOWN)
                .flatMap(List::stream)
                .map(RowProblem::problem)
                .forEach(problems::add);
        String shown = byRow.size() > SHOWN ? ", the first " + SHOWN + " are shown" : "";
        String rows = byRow.size() == 1 ? "1 row was" : byRow.size() + " rows were";
        problems.add(
                new Problem(asked, rows + " refused" + shown + ", and nothing was recorded", todo));
        return new Refused(problems);
    }

    private String copied(SheetFiles files, Path folder) {
        try {
            Files.createDirectories(folder);
            new MarkedCopy(files).write(report.sheets(), this::why, folder);
            return "put them right in the copy in \""
                    + folder
                    + "\", where the last column says why, and import that";
        } catch (IOException | UncheckedIOException | Refused e) {
            return "the marked copy could not be written to \""
                    + folder
                    + "\"; name another folder with --marked";
        }
    }

    private @Nullable String why(RowPosition at) {
        List<RowProblem> problems = byRow.get(at);
        return problems == null
                ? null
                : problems.stream().map(RowProblem::reason).collect(Collectors.joining(" | "));
    }
}
