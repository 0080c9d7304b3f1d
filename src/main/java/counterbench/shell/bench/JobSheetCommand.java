package counterbench.shell.bench;

import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.bench.JobPage;
import counterbench.acts.store.ReadSituation;
import counterbench.db.Store;
import counterbench.labels.LabelContent;
import counterbench.labels.gs1.ElementString;
import counterbench.printing.Block;
import counterbench.printing.Document;
import counterbench.printing.Paper;
import counterbench.printing.Printer;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.OutputFile;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.acts.LiveNames;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** The sheet of a job, on the screen or as pages for the printer. */
public final class JobSheetCommand extends BaseCommand {
    private static final Option<Boolean> PDF =
            Option.flag("pdf", "write it as a PDF file into exports in the home folder");
    private static final Option<Path> TO =
            Option.of("to", "FILE", Readings.PATH, "the PDF file, or the folder that it goes to");
    private static final Option<Boolean> REPLACE =
            Option.flag("replace", "write over a file of that name");
    private static final Option<Paper> PAPER =
            Option.of(
                    "paper",
                    "PAPER",
                    Readings.oneOf(Paper.class),
                    "letter (unless said otherwise) or a4");

    private final Supplier<Store> store;
    private final SiteChoice sites;
    private final Supplier<Printer> printer;

    /**
     * @param printer draws the pages; made only for that, as its libraries are large
     */
    public JobSheetCommand(Supplier<Store> store, SiteChoice sites, Supplier<Printer> printer) {
        super(manual(new LiveNames(store)));
        this.store = store;
        this.sites = sites;
        this.printer = printer;
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("job sheet", Group.BENCH, "Show or print the procedure for one vehicle")
                .takes(
                        BenchOptions.JOB.completedBy(names.jobs()),
                        PDF,
                        TO,
                        REPLACE,
                        PAPER,
                        Options.SITE.completedBy(names.sites()))
                .example("job sheet N-169")
                .example("job sheet N-169 --pdf --paper a4")
                .note(
                        "Only the steps that are for this vehicle stand there, with cautions, limits"
                                + " in both units, what is done and what is missing. It does not"
                                + " replace the maker's own procedure.");
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        String job = BenchOptions.job(in, site);
        Situation situation = new ReadSituation(store.get()).latest(site, in.now(), Named.job(job));
        situation.job(job);
        List<Block> blocks = JobPage.sheet(situation, job);
        if (in.has(PDF) || in.has(TO)) {
            print(in, site, job, blocks);
        } else {
            in.print("job " + job + " of site " + site.site());
            Blocks.show(in, blocks);
        }
        return Status.DONE;
    }

    private void print(Invocation in, Site site, String job, List<Block> blocks) {
        List<Block> all = new ArrayList<>();
        symbol(job).map(Block.Symbol::new).ifPresent(all::add);
        all.addAll(blocks);
        String asOf = "site " + site.site() + ", as of " + site.wallTime(in.now());
        Document sheet = new Document("job " + job, in.find(PAPER).orElse(Paper.LETTER), asOf, all);
        Path place = in.find(TO).orElseGet(() -> in.home().folder("exports"));
        Path file = OutputFile.PDF.at(place, usualName(site, job), in.has(REPLACE));
        OutputFile.writing(
                file,
                () -> {
                    printer.get().print(sheet, file);
                    return file;
                });
        in.print(file.toString());
    }

    /** A job whose name no symbol can hold is printed without one. */
    private static Optional<ElementString> symbol(String job) {
        try {
            return Optional.of(LabelContent.ofJob(job));
        } catch (Refused e) {
            return Optional.empty();
        }
    }

    private static String usualName(Site site, String job) {
        return "job-" + site.site() + "-" + job.replaceAll("[^A-Za-z0-9._-]", "_") + ".pdf";
    }
}
