package counterbench.shell.campaign;

import counterbench.campaign.Pack;
import counterbench.campaign.Revisions;
import counterbench.campaign.yaml.PackProblem;
import counterbench.campaign.yaml.PackReading;
import counterbench.intake.store.LoadPack;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import counterbench.shell.Argument;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Readings;
import counterbench.shell.Status;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Reads packs and says what is wrong with them. Needs no store. */
public final class CampaignCheckCommand extends BaseCommand {
    private static final Argument<Path> PACK =
            Argument.of("PACK", Readings.PATH, "a pack, or a folder of packs").asRepeatable();

    public CampaignCheckCommand() {
        super(
                Manual.of("campaign check", Group.CAMPAIGNS, "Check packs before they are loaded")
                        .takes(PACK)
                        .example("campaign check QM-26-014-B.yaml")
                        .note(
                                "Every problem is told with file, line and column and the way to"
                                        + " mend it. A warning does not stop a pack."));
    }

    @Override
    protected Status run(Invocation in) {
        List<Problem> problems = new ArrayList<>();
        List<Pack> packs = new ArrayList<>();
        PackFiles.of(in.all(PACK)).forEach(file -> problems.addAll(check(in, file, packs)));
        problems.addAll(together(packs));
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
        return Status.DONE;
    }

    /** What is wrong with packs beside each other, in the order in which they come in force. */
    private static List<Problem> together(List<Pack> packs) {
        List<Pack> before = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        packs.stream()
                .sorted(Comparator.comparing(Pack::inForceFrom).thenComparing(Pack::revision))
                .forEach(
                        pack -> {
                            problems.addAll(Revisions.problemsOf(before, pack));
                            before.add(pack);
                        });
        return problems;
    }

    private static List<Problem> check(Invocation in, PackFiles.PackFile file, List<Pack> packs) {
        try {
            PackReading reading = LoadPack.readWithList(file.path(), file.name());
            Told.warnings(in, reading);
            Pack pack = reading.pack();
            if (pack != null) {
                packs.add(pack);
                in.print(file.path() + ": " + Told.name(pack) + " is in order");
            }
            return reading.problems().stream().map(PackProblem::asProblem).toList();
        } catch (Refused unreadable) {
            return unreadable.problems();
        }
    }
}
