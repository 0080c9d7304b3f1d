package counterbench.shell;

import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.shared.Interrupted;
import counterbench.shared.Progress;
import counterbench.shared.Quantity;
import counterbench.shared.Refused;
import counterbench.shared.StoreUnusable;
import counterbench.shared.WrittenTime;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;

/** Small commands that show each thing a command can do. */
public final class SampleCommands {
    private SampleCommands() {}

    /** A shell that has them all. */
    public static FakeShell shell() {
        return new FakeShell(
                new Take(),
                new Show(),
                new Fail(),
                new Act(),
                new Sign(),
                new Pick(),
                new Sad(),
                new Work());
    }

    /** Takes every kind of parameter and prints what it got. */
    static final class Take extends BaseCommand {
        static final Argument<String> KIT = Argument.of("KIT", Readings.TEXT, "the kit's serial");
        static final Argument<Quantity> QUANTITY =
                Argument.of("QUANTITY", Readings.QUANTITY, "how many").asOptional();
        static final Option<String> PART =
                Option.of("part", "PART", Readings.TEXT, "the kit part")
                        .asRequired()
                        .completedBy(begun -> List.of("QM-4470-K", "QM-4490-K"));
        static final Option<WrittenTime> AT =
                Option.of("at", "TIME", Readings.TIME, "when it came; now unless said");
        static final Option<String> NOTE =
                Option.of("note", "TEXT", Readings.TEXT, "a note").asRepeatable();
        static final Option<Boolean> DRY = Option.flag("dry-run", "records nothing");

        Take() {
            super(
                    Manual.of("box take", Group.PARTS_COUNTER, "Take a box into the store")
                            .takes(KIT, QUANTITY, PART, AT, NOTE, DRY)
                            .example("box take K-2207 4 --part QM-4470-K")
                            .note("A box is taken once."));
        }

        @Override
        protected Status run(Invocation in) {
            in.print(
                    in.get(KIT)
                            + " "
                            + in.find(QUANTITY).map(Quantity::toString).orElse("-")
                            + " "
                            + in.get(PART)
                            + " "
                            + in.find(AT)
                                    .map(t -> t.at(ZoneId.of("America/Chicago")))
                                    .orElse(in.now())
                            + " "
                            + in.all(NOTE)
                            + " "
                            + in.has(DRY));
            return Status.DONE;
        }
    }

    /** Prints rows. */
    static final class Show extends BaseCommand {
        Show() {
            super(Manual.of("box show", Group.PARTS_COUNTER, "Show the boxes").printsRows());
        }

        @Override
        protected Status run(Invocation in) {
            try (Rows rows =
                    in.rows(Column.text("box"), Column.number("quantity"), Column.text("note"))) {
                rows.add("K-1", Quantity.of("-3.5"), "=SUM(A1)");
                rows.add("K-2", null, "a\u001b[31m \"b\", c");
            }
            return Status.DONE;
        }
    }

    /** Fails as it is told. */
    static final class Fail extends BaseCommand {
        private static final Argument<String> HOW = Argument.of("HOW", Readings.TEXT, "how");

        Fail() {
            super(Manual.of("fail", Group.LEAD, "Fail").takes(HOW));
        }

        @Override
        protected Status run(Invocation in) throws Exception {
            in.print("begun");
            return switch (in.get(HOW)) {
                case "refused" ->
                        throw new Refused("kit K-1", "it is issued to job J-118", "put it back");
                case "usage" -> throw in.wrong("say one of the two");
                case "store" -> throw new StoreUnusable("the store is locked");
                case "wrapped" ->
                        throw new IllegalStateException(new StoreUnusable("the store is locked"));
                case "interrupted" -> throw new Interrupted();
                case "thread" -> throw new InterruptedException();
                case "found" -> Status.FOUND;
                case "memory" -> throw new OutOfMemoryError("no room");
                default -> throw new IllegalStateException("oh\u001b");
            };
        }
    }

    /** Acts as somebody. */
    static final class Act extends BaseCommand {
        Act() {
            super(Manual.of("act", Group.BENCH, "Act").takes(Options.SITE));
        }

        @Override
        protected Status run(Invocation in) {
            in.print(in.person().name() + " at " + in.site().orElse("the only site"));
            in.print("you said " + in.ask("anything? ").orElse("nothing"));
            return Status.DONE;
        }
    }

    /** Signs Ada in, with a PIN that is asked. */
    static final class Sign extends BaseCommand {
        Sign() {
            super(Manual.of("sign", Group.EVERYBODY, "Sign Ada in"));
        }

        @Override
        protected Status run(Invocation in) {
            in.typedPin("PIN: ", "type it");
            in.session().signIn(new Person("Ada", Set.of(Role.LEAD)));
            in.print("you said " + in.ask("anything? ").orElse("nothing"));
            return Status.DONE;
        }
    }

    /** Offers values for its arguments. */
    static final class Pick extends BaseCommand {
        private static final Argument<String> JOB =
                Argument.of("JOB", Readings.TEXT, "a job")
                        .completedBy(begun -> List.of("J-1", "J-2"));
        private static final Argument<Colour> COLOUR =
                Argument.of("COLOUR", Readings.oneOf(Colour.class), "a colour").asOptional();

        enum Colour {
            RED,
            GREEN
        }

        Pick() {
            super(Manual.of("pick", Group.BENCH, "Pick").takes(JOB, COLOUR));
        }

        @Override
        protected Status run(Invocation in) {
            return Status.DONE;
        }
    }

    /** Cannot find out what to offer. */
    static final class Sad extends BaseCommand {
        Sad() {
            super(
                    Manual.of("sad", Group.BENCH, "Be sad")
                            .takes(
                                    Argument.of("JOB", Readings.TEXT, "a job")
                                            .completedBy(
                                                    begun -> {
                                                        throw new StoreUnusable("locked");
                                                    })));
        }

        @Override
        protected Status run(Invocation in) {
            return Status.DONE;
        }
    }

    /** Works for long, until it is stopped. */
    static final class Work extends BaseCommand {
        Work() {
            super(Manual.of("work", Group.MONTH, "Work"));
        }

        @Override
        protected Status run(Invocation in) throws InterruptedException {
            in.tell("working");
            Progress progress = in.progress();
            progress.begin("sweeping", 0);
            while (true) {
                Thread.onSpinWait();
                progress.step(1);
            }
        }
    }
}
