package counterbench.shell.people;

import counterbench.db.Store;
import counterbench.people.NewSite;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.people.store.PinHash;
import counterbench.people.store.SetUpStore;
import counterbench.people.store.StaffBook;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shared.units.Weight;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.Status;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Sets up the store with its first site and lead, or a further site. */
public final class SetupCommand extends BaseCommand {
    private static final Option<String> SITE =
            Option.of("site", "SITE", Readings.TEXT, "the site's short name").asRequired();
    private static final Option<String> NAME =
            Option.of("name", "NAME", Readings.TEXT, "the site's full name").asRequired();
    private static final Option<String> ZONE =
            Option.of("zone", "ZONE", Readings.TEXT, "its time zone").asRequired();
    private static final Option<String> CURRENCY =
            Option.of("currency", "CODE", Readings.TEXT, "its currency").asRequired();
    private static final Option<String> LEAD =
            Option.of("lead", "NAME", Readings.TEXT, "who leads; for the first site");
    private static final Option<Long> JOB_DAYS =
            Option.of(
                    "job-days",
                    "DAYS",
                    Readings.WHOLE_NUMBER,
                    "how long a job may be open without a word, 14 unless said");
    private static final Option<Long> ACKNOWLEDGEMENT_DAYS =
            Option.of(
                    "acknowledgement-days",
                    "DAYS",
                    Readings.WHOLE_NUMBER,
                    "how long a shipment may wait to be acknowledged, 21 unless said");
    private static final Option<Long> CREDIT_DAYS =
            Option.of(
                    "credit-days",
                    "DAYS",
                    Readings.WHOLE_NUMBER,
                    "how long a claim may wait for its credit, 45 unless said");
    private static final Option<String> COMPANY_PREFIX =
            Option.of(
                    "company-prefix",
                    "DIGITS",
                    Readings.TEXT,
                    "its GS1 company prefix, with which shipments are numbered");

    private static final Option<Weight> SHIPMENT_LIMIT =
            Option.of(
                    "shipment-limit",
                    "WEIGHT",
                    Readings.WEIGHT,
                    "the most that a shipment may weigh, such as \"30 kg\"");

    private final Supplier<Store> store;

    public SetupCommand(Supplier<Store> store) {
        super(
                Manual.of("setup", Group.LEAD, "Set up the store, or a further site in it")
                        .takes(SITE, NAME, ZONE, CURRENCY, LEAD)
                        .takes(
                                JOB_DAYS,
                                ACKNOWLEDGEMENT_DAYS,
                                CREDIT_DAYS,
                                COMPANY_PREFIX,
                                SHIPMENT_LIMIT)
                        .example(
                                "setup --site NORTH --name \"North garage\" --zone America/Chicago"
                                        + " --currency USD --lead \"Ada\"")
                        .note(
                                "The lead's PIN is asked, or taken from COUNTERBENCH_PIN; it is 4"
                                        + " to 12 digits and never part of the line.\nA further"
                                        + " site is set up by a lead who is signed in, without"
                                        + " --lead."));
        this.store = store;
    }

    @Override
    protected Status run(Invocation in) {
        List<Site> before = new StaffBook(store.get()).sites();
        boolean first = before.isEmpty();
        SetUpStore.Result result = first ? first(in) : further(in);
        Site site = result.site();
        in.print(
                "site "
                        + site.site()
                        + " \""
                        + site.name()
                        + "\" is set up: "
                        + site.zone()
                        + ", "
                        + site.currency()
                        + ", journal entry "
                        + result.entry().number());
        if (first) {
            in.tell("next: sign-in \"" + result.entry().person() + "\", or help");
        } else if (before.size() == 1 && isAtNoSite(in)) {
            stay(in, before.get(0), site);
        }
        return Status.DONE;
    }

    /** With only one site nobody had to say which; with a second one nobody is left without. */
    private static void stay(Invocation in, Site here, Site further) {
        in.session().choose(here.site());
        in.tell(
                "the store has two sites now, and this shell stays at "
                        + here.site()
                        + "; for "
                        + further.site()
                        + " add --site "
                        + further.site()
                        + " to an act, or sign-in NAME --site "
                        + further.site()
                        + "; scripts set "
                        + Invocation.SITE_VARIABLE);
    }

    private static boolean isAtNoSite(Invocation in) {
        return in.session().site().isEmpty()
                && in.surroundings().variable(Invocation.SITE_VARIABLE).isEmpty();
    }

    private SetUpStore.Result first(Invocation in) {
        String lead =
                in.find(LEAD)
                        .orElseThrow(
                                () ->
                                        new Refused(
                                                "setup",
                                                "the first site needs a lead",
                                                "add --lead with a name"));
        NewSite asked = asked(in);
        SetUpStore.checkFirst(asked, lead);
        PinHash pin = NewPin.fromEnvironmentOrTyped(in, lead);
        return new SetUpStore(store.get()).first(asked, lead, pin, in.now(), in.line());
    }

    private SetUpStore.Result further(Invocation in) {
        Person person = in.person();
        person.mustActAs(Role.LEAD, "setup");
        in.find(LEAD).ifPresent(this::checkLead);
        return new SetUpStore(store.get()).further(asked(in), person, in.now(), in.line());
    }

    /** People belong to the whole store, so a further site brings no lead of its own. */
    private void checkLead(String lead) {
        if (!new StaffBook(store.get()).person(lead).roles().contains(Role.LEAD)) {
            throw new Refused(
                    "lead \"" + lead + "\"",
                    "people belong to all sites, and this one is no lead",
                    "leave out --lead, or make this person a lead with person role");
        }
    }

    private static NewSite asked(Invocation in) {
        Site.Patience usual = Site.Patience.USUAL;
        return new NewSite(
                in.get(SITE),
                in.get(NAME),
                in.get(ZONE),
                in.get(CURRENCY),
                new Site.Patience(
                        days(in.find(JOB_DAYS), usual.jobDays()),
                        days(in.find(ACKNOWLEDGEMENT_DAYS), usual.acknowledgementDays()),
                        days(in.find(CREDIT_DAYS), usual.creditDays())),
                in.find(COMPANY_PREFIX).orElse(null),
                in.find(SHIPMENT_LIMIT).orElse(null));
    }

    /** Numbers beyond all bounds stay beyond the bounds that are checked. */
    private static int days(Optional<Long> said, int usual) {
        return said.map(d -> (int) Math.max(-1, Math.min(d, Integer.MAX_VALUE))).orElse(usual);
    }
}
