package counterbench.shell.bench;

import counterbench.people.Person;
import counterbench.shell.BaseCommand;
import counterbench.shell.Circumstances;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Runner;
import counterbench.shell.Transcript;
import counterbench.shell.care.ReverseCommand;
import counterbench.shell.counter.KitIssueCommand;
import counterbench.shell.counter.PartIssueCommand;
import counterbench.shell.month.BalanceCommand;
import counterbench.shell.rack.CoreRemoveCommand;
import counterbench.shell.rack.PlugCommand;
import java.io.IOException;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicLong;

/** The bench of the invented garage's north yard, with a clock that goes on by a second a look. */
final class BenchOfNorth {
    private BenchOfNorth() {}

    /** Otis's shell. */
    static FakeShell otis(Larkmere larkmere) {
        return shellOf(larkmere, Larkmere.OTIS);
    }

    static FakeShell shellOf(Larkmere larkmere, Person person) {
        return larkmere.shellOf(person, commands(larkmere));
    }

    private static BaseCommand[] commands(Larkmere larkmere) {
        return new BaseCommand[] {
            new JobOpenCommand(larkmere::store, larkmere.sites()),
            new JobCompleteCommand(larkmere::store, larkmere.sites()),
            new FitCommand(larkmere::store, larkmere.sites()),
            new RefitCommand(larkmere::store, larkmere.sites()),
            new TakeOffCommand(larkmere::store, larkmere.sites()),
            new PutBackCommand(larkmere::store, larkmere.sites()),
            new ScrapCommand(larkmere::store, larkmere.sites()),
            new MarkCommand(larkmere::store, larkmere.sites()),
            new BenchCommand(larkmere::store, larkmere.sites()),
            new JobShowCommand(larkmere::store, larkmere.sites()),
            new JobListCommand(larkmere::store, larkmere.sites()),
            new KitIssueCommand(larkmere::store, larkmere.sites()),
            new PartIssueCommand(larkmere::store, larkmere.sites()),
            new CoreRemoveCommand(larkmere::store, larkmere.sites()),
            new PlugCommand(larkmere::store, larkmere.sites()),
            new ReverseCommand(larkmere::store, larkmere.sites()),
            new BalanceCommand(larkmere::store, larkmere.sites())
        };
    }

    /** Types a transcript again at Otis's shell. */
    static void replay(Larkmere larkmere, String name) throws IOException {
        FakeShell shell = otis(larkmere);
        Transcript.of(name).replay(new Runner(shell.commands()), ticking(shell));
    }

    private static Circumstances ticking(FakeShell shell) {
        Circumstances around = shell.circumstances();
        AtomicLong looks = new AtomicLong();
        Instant begin = around.clock().instant();
        return new Circumstances(
                around.surroundings(),
                around.home(),
                () -> begin.plusSeconds(looks.getAndIncrement()),
                around.session(),
                around.stop(),
                around.signIn());
    }
}
