package counterbench.shell.labels;

import counterbench.labels.Label;
import counterbench.labels.Labelled;
import counterbench.labels.store.LabelBook;
import counterbench.printing.LabelSheet;
import counterbench.printing.Paper;
import counterbench.shared.Site;
import counterbench.shell.BaseCommand;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.OutputFile;
import counterbench.shell.Status;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Prints labels of one kind: finds what they are put on, and draws a sheet of them. */
abstract class LabelCommand extends BaseCommand {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss", Locale.ROOT);

    private final LabelPress press;

    LabelCommand(Manual manual, LabelPress press) {
        super(manual);
        this.press = press;
    }

    /**
     * What the line names.
     *
     * @throws counterbench.shared.Refused if there is no such thing
     */
    abstract List<? extends Labelled> named(Invocation in, LabelBook book);

    @Override
    protected final Status run(Invocation in) {
        Site site = press.sites().of(in);
        Paper paper = in.find(LabelOptions.PAPER).orElse(Paper.LETTER);
        int skip = LabelOptions.skip(in, paper);
        int copies = LabelOptions.copies(in);
        List<Label> labels =
                named(in, new LabelBook(press.store().get(), site)).stream()
                        .map(Labelled::label)
                        .flatMap(label -> Collections.nCopies(copies, label).stream())
                        .toList();
        print(in, site, new LabelSheet(paper, skip, labels));
        return Status.DONE;
    }

    private void print(Invocation in, Site site, LabelSheet sheet) {
        Path place = in.find(LabelOptions.TO).orElseGet(() -> in.home().folder("exports"));
        Path file = OutputFile.PDF.at(place, usualName(in, site), in.has(LabelOptions.REPLACE));
        OutputFile.writing(
                file,
                () -> {
                    press.printer().get().print(sheet, file);
                    return file;
                });
        in.print(file.toString());
        in.tell(told(sheet));
    }

    private static String usualName(Invocation in, Site site) {
        String kind = in.commandName().replace(' ', '-');
        return kind + "-" + site.site() + "-" + STAMP.format(in.now().atZone(site.zone())) + ".pdf";
    }

    private static String told(LabelSheet sheet) {
        int labels = sheet.labels().size();
        return "%d %s on %d %s of %s paper; print at full size, without fitting to the page"
                .formatted(
                        labels,
                        labels == 1 ? "label" : "labels",
                        sheet.sheets(),
                        sheet.sheets() == 1 ? "sheet" : "sheets",
                        sheet.paper() == Paper.A4 ? "A4" : "letter");
    }
}
