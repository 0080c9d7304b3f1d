package counterbench.shell.rack;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.rack.RemoveCore;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import java.util.function.Supplier;

/** Record that a unit was taken off a vehicle. */
public final class CoreRemoveCommand extends ActCommand {
    private static final Argument<String> TAG =
            Argument.of("TAG", RackOptions.CORE, "the tag that hangs on it");
    private static final Option<String> JOB =
            Option.of("job", "JOB", Readings.TEXT, "the job that it was removed on").asRequired();
    private static final Option<String> SERIAL =
            Option.of("serial", "SERIAL", Readings.TEXT, "the serial on its plate").asRequired();
    private static final Option<String> PART =
            Option.of("part", "PART", Readings.TEXT, "its part number, where the plate shows it");

    public CoreRemoveCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of(
                                "core remove",
                                Group.CORE_RACK,
                                "Record that a unit was taken off a vehicle")
                        .takes(TAG, JOB, SERIAL, PART)
                        .example("core remove NC-0076 --job N-155 --serial 7P288001"),
                store,
                sites);
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        return new RemoveCore(
                in.get(TAG), in.get(JOB), in.get(SERIAL), in.find(PART).orElse(null), stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return "core " + in.get(TAG) + " removed on job " + in.get(JOB);
    }
}
