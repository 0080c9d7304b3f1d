package counterbench.shell.bench;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.bench.OpenJob;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import counterbench.shell.acts.LiveNames;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Open a job: a vehicle has come for a campaign. */
public final class JobOpenCommand extends ActCommand {
    static final Option<String> WORK_ORDER =
            Option.of(
                    "work-order", "NUMBER", Readings.TEXT, "the workshop's own number, for claims");
    static final Option<Long> MILEAGE =
            Option.of("mileage", "NUMBER", Readings.WHOLE_NUMBER, "what the vehicle shows");
    private static final Argument<String> JOB =
            Argument.of("JOB", Readings.TEXT, "the name that the job gets");
    private static final Option<String> CAMPAIGN =
            Option.of("campaign", "CAMPAIGN", Readings.TEXT, "the campaign").asRequired();
    private static final Option<String> VIN =
            Option.of("vin", "VIN", Readings.TEXT, "the vehicle, as written on it").asRequired();
    private static final Option<String> TECHNICIAN =
            Option.of(
                    "technician",
                    "NAME",
                    Readings.TEXT,
                    "who works on it; you unless said, if you are a technician");
    private static final Option<String> REDO_OF =
            Option.of("redo-of", "JOB", Readings.TEXT, "the earlier job that is done again");

    public JobOpenCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)), store, sites);
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("job open", Group.BENCH, "Open a job for a vehicle that has come")
                .takes(
                        JOB,
                        CAMPAIGN.completedBy(names.campaigns()),
                        VIN,
                        WORK_ORDER,
                        MILEAGE,
                        TECHNICIAN.completedBy(names.people()),
                        REDO_OF.completedBy(names.jobs()))
                .example("job open N-170 --campaign HB-0417 --vin 0LKPT6D41NA002118")
                .example(
                        "job open N-171 --campaign HB-0417 --vin 0LKPT6D41NA002118 --work-order"
                                + " W26-1081 --mileage 42031 --redo-of N-170")
                .note(
                        "A vehicle that is not on the campaign's list, a VIN that cannot be and a"
                                + " vehicle that was done before are recorded and said at once.");
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new OpenJob(
                in.get(JOB),
                in.get(CAMPAIGN),
                in.get(VIN),
                new OpenJob.Details(
                        in.find(WORK_ORDER).orElse(null),
                        in.find(TECHNICIAN).or(() -> technician(in.person())).orElse(null),
                        in.find(REDO_OF).orElse(null),
                        in.find(MILEAGE).orElse(null)),
                stamp);
    }

    private static Optional<String> technician(Person person) {
        return person.roles().contains(Role.TECHNICIAN)
                ? Optional.of(person.name())
                : Optional.empty();
    }

    @Override
    protected List<String> hints(RecordAct.Recorded recorded) {
        boolean doubtful =
                recorded.raised().stream()
                        .map(Finding::rule)
                        .anyMatch(r -> r == Rule.VIN_INVALID || r == Rule.VEHICLE_NOT_LISTED);
        return doubtful
                ? List.of(
                        "read the plate again; if it was a slip of the hand, take it back and open"
                                + " the job anew: reverse "
                                + recorded.entry().number()
                                + " --reason TEXT")
                : List.of();
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return "job "
                + in.get(JOB)
                + " opened, campaign "
                + in.get(CAMPAIGN)
                + ", vehicle "
                + recorded.after().job(in.get(JOB)).job().vin();
    }
}
