package counterbench.shell.labels;

import counterbench.labels.Labelled;
import counterbench.labels.store.LabelBook;
import counterbench.shell.Argument;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Readings;
import counterbench.shell.acts.LiveNames;
import java.util.List;

/** Prints labels of things that bear a name: kits, jobs, cores or shipments. */
public final class LabelNamedCommand extends LabelCommand {
    private final NamedThing thing;
    private final Argument<String> name;

    public LabelNamedCommand(NamedThing thing, LabelPress press) {
        this(
                thing,
                press,
                Argument.of(
                                thing.words().name(),
                                Readings.TEXT,
                                "which " + thing.words().word() + "s")
                        .asRepeatable()
                        .completedBy(thing.names(new LiveNames(press.store()))));
    }

    private LabelNamedCommand(NamedThing thing, LabelPress press, Argument<String> name) {
        super(manual(thing, name), press);
        this.thing = thing;
        this.name = name;
    }

    private static Manual manual(NamedThing thing, Argument<String> name) {
        String word = thing.words().word();
        Manual manual =
                Manual.of("label " + word, Group.CORE_RACK, "Print labels of " + word + "s")
                        .takes(name)
                        .takes(LabelOptions.all())
                        .example(thing.words().example());
        for (String note : thing.notes()) {
            manual = manual.note(note);
        }
        return manual;
    }

    @Override
    List<? extends Labelled> named(Invocation in, LabelBook book) {
        return in.all(name).stream().map(each -> thing.named(each, book)).toList();
    }
}
