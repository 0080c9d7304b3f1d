package counterbench.shell.counter;

import counterbench.acts.Act;
import counterbench.acts.IssueKit;
import counterbench.acts.KitListing;
import counterbench.acts.Named;
import counterbench.acts.NextKit;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.acts.store.ReadSituation;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.YesNo;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import java.util.function.Supplier;

/** Hands a kit to a job: the one that is named, or the one that expires first. */
public final class KitIssueCommand extends ActCommand {
    private static final Argument<String> KIT =
            Argument.of("KIT", Readings.TEXT, "the kit's serial; with --job alone, one is proposed")
                    .asOptional();
    private static final Argument<String> JOB = CounterOptions.JOB.asOptional();
    private static final Option<String> FOR =
            Option.of("job", "JOB", Scanned.TEXT, "the job, where no kit is named");
    private static final Option<String> PART =
            Option.of("part", "KITPART", Readings.TEXT, "which kind of kit to propose");
    private static final Option<Boolean> FIRST =
            Option.flag("first", "take the proposed kit without being asked");

    private final Supplier<Store> store;

    public KitIssueCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
        this.store = store;
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("kit issue", Group.PARTS_COUNTER, "Hand a kit to a job")
                .takes(
                        KIT.completedBy(names.kitsOnShelf()),
                        JOB.completedBy(names.openJobs()),
                        FOR.completedBy(names.openJobs()),
                        PART.completedBy(names.kitParts()),
                        FIRST)
                .example("kit issue FP-1012 N-107")
                .example("kit issue --job N-107")
                .example("kit issue --job N-107 --first")
                .note(
                        "Kits that expire first should be used first. With --job and no kit, the"
                                + " kit in date that the job needs and that expires first is proposed;"
                                + " where another is taken, the command says so and records it.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        if (in.has(JOB) == in.has(FOR) || (in.has(JOB) && !in.has(KIT))) {
            throw in.wrong(
                    "which kit for which job? kit issue KIT JOB, or kit issue --job JOB to be"
                            + " proposed a kit");
        }
        String job = Scanned.job(in, site, in.find(JOB).or(() -> in.find(FOR)).orElseThrow());
        String kit =
                in.find(KIT)
                        .map(text -> Scanned.kit(in, site, text))
                        .orElseGet(() -> proposed(in, site, job));
        return new IssueKit(kit, job, stamp);
    }

    private String proposed(Invocation in, Site site, String job) {
        Situation situation = new ReadSituation(store.get()).run(site, in.now(), Named.job(job));
        KitListing kit = new NextKit(situation, situation.job(job)).propose(in.find(PART));
        String part = kit.kit().kitPart();
        if (in.has(FIRST)) {
            return kit.serial();
        }
        String asked = "kit issue --job " + job;
        if (!in.isScreen()) {
            throw new Refused(
                    asked,
                    kit.words() + " of " + part + " expires first",
                    "add --first to take it, or say kit issue " + kit.serial() + " " + job);
        }
        if (!YesNo.of(in, "Take " + kit.words() + " of " + part + "?")) {
            throw new Refused(
                    asked,
                    "kit " + kit.serial() + " was not taken",
                    "name the kit instead: kit issue KIT " + job);
        }
        return kit.serial();
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        String job = recorded.facts().get(0).text("job");
        return Told.kits(recorded) + " issued to job " + job;
    }
}
