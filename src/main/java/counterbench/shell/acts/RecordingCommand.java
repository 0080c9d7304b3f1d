package counterbench.shell.acts;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.people.Person;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shared.WrittenTime;
import counterbench.shell.BaseCommand;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import java.time.Instant;
import java.util.List;
import java.util.function.Supplier;

/** Records what a line asks for, at the sites whose books it concerns, and says what came of it. */
public abstract class RecordingCommand extends BaseCommand {
    private static final Option<WrittenTime> AT =
            Option.of("at", "TIME", Readings.TIME, "when it happened; now unless said");
    private static final Option<String> BY =
            Option.of("by", "NAME", Readings.TEXT, "who did it; you unless said");

    private final Supplier<Store> store;
    private final SiteChoice sites;

    /** Whether the act bears the time at which it happened. */
    protected enum When {
        TOLD,
        NOT_KEPT
    }

    /**
     * @param manual says what the command takes besides when, who and at which site
     */
    protected RecordingCommand(Manual manual, Supplier<Store> store, SiteChoice sites) {
        this(manual, store, sites, When.TOLD);
    }

    /** One of which it may not be kept when it happened. */
    protected RecordingCommand(Manual manual, Supplier<Store> store, SiteChoice sites, When when) {
        super(
                (when == When.TOLD ? manual.takes(AT) : manual)
                        .takes(
                                BY.completedBy(new LiveNames(store).people()),
                                Options.SITE.completedBy(new LiveNames(store).sites())));
        this.store = store;
        this.sites = sites;
    }

    /** An act, and the site in whose journal it is recorded. */
    public record AtSite(Site site, Act act) {}

    /**
     * The acts that the line asks for, each recorded by itself in their order.
     *
     * @param site the site at which the line was typed
     */
    protected abstract List<AtSite> acts(Invocation in, Site site, Stamp stamp);

    /** The sentence that says it is done; where the act stands in the journal is added. */
    protected abstract String done(Invocation in, RecordAct.Recorded recorded);

    /** What the person may want to do about what it raised; nothing unless a command knows more. */
    protected List<String> hints(RecordAct.Recorded recorded) {
        return List.of();
    }

    @Override
    protected final Status run(Invocation in) {
        Site site = sites.of(in);
        Person person = in.person();
        Instant now = in.now();
        Stamp stamp = new Stamp(at(in, site, now), in.find(BY).orElse(person.name()));
        List<AtSite> acts = acts(in, site, stamp);
        RecordAct record = new RecordAct(store.get());
        if (acts.size() > 1) {
            acts.forEach(one -> record.mustBePossible(by(in, person, one, now), one.act()));
        }
        for (AtSite one : acts) {
            RecordAct.Recorded recorded = record.run(by(in, person, one, now), one.act());
            in.print(done(in, recorded) + ": " + ActTold.where(one.site(), recorded.entry()));
            ActTold.besides(recorded).forEach(in::tell);
            hints(recorded).forEach(in::tell);
        }
        return Status.DONE;
    }

    private static RecordAct.By by(Invocation in, Person person, AtSite one, Instant now) {
        return new RecordAct.By(person, one.site(), now, in.commandName(), in.line());
    }

    private static Instant at(Invocation in, Site site, Instant now) {
        Instant at = in.find(AT).map(time -> time.at(site.zone())).orElse(now);
        if (at.isAfter(now)) {
            throw new Refused(
                    "--at \"" + in.get(AT).local().toString().replace('T', ' ') + "\"",
                    "that time has not come yet",
                    "say when it happened, or leave --at out");
        }
        return at;
    }
}
