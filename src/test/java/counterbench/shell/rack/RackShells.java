package counterbench.shell.rack;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.sheets.poi.WorkbookWriter;
import counterbench.shell.BaseCommand;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import counterbench.shell.care.ReverseCommand;
import counterbench.shell.counter.TransitCommand;
import counterbench.shell.intake.ImportCommand;
import java.util.Set;

/** Shells at the rack of the invented garage's north yard. */
final class RackShells {
    static final Person MAREN = new Person("Maren", Set.of(Role.LEAD));

    /** Opens the shipment that most tests fill. */
    static final String OPEN =
            "shipment open SH-N14 --carrier \"Two Rivers Freight\" --tracking N500114203";

    private RackShells() {}

    static FakeShell hal(Larkmere larkmere) {
        return larkmere.shellOf(Larkmere.HAL, commands(larkmere));
    }

    static FakeShell maren(Larkmere larkmere) {
        return larkmere.shellOf(MAREN, commands(larkmere));
    }

    static FakeShell otis(Larkmere larkmere) {
        return larkmere.shellOf(Larkmere.OTIS, commands(larkmere));
    }

    /** What a line that must be done shows. */
    static FakeShell.Output done(FakeShell shell, String line) {
        var output = shell.line(line);
        assertThat(output.status()).as(output.screen()).isEqualTo(Status.DONE);
        return output;
    }

    /** The same as it is seen, without the numbers of entries. */
    static String told(FakeShell shell, String line) {
        return done(shell, line).screen().replaceAll(": entry \\d+ of site [A-Z]+", "");
    }

    private static BaseCommand[] commands(Larkmere larkmere) {
        return new BaseCommand[] {
            new CoreRemoveCommand(larkmere::store, larkmere.sites()),
            new CoreSendCommand(larkmere::store, larkmere.sites()),
            new CoreArriveCommand(larkmere::store, larkmere.sites()),
            new DrainBeginCommand(larkmere::store, larkmere.sites()),
            new DrainEndCommand(larkmere::store, larkmere.sites()),
            new PlugCommand(larkmere::store, larkmere.sites()),
            new UnplugCommand(larkmere::store, larkmere.sites()),
            new PackCommand(larkmere::store, larkmere.sites()),
            new RackCommand(larkmere::store, larkmere.sites()),
            new ShipmentOpenCommand(larkmere::store, larkmere.sites()),
            new ShipmentAddCommand(larkmere::store, larkmere.sites()),
            new ShipmentTakeOffCommand(larkmere::store, larkmere.sites()),
            new ShipCommand(larkmere::store, larkmere.sites()),
            new ShipmentShowCommand(larkmere::store, larkmere.sites()),
            new AcknowledgeCommand(larkmere::store, larkmere.sites()),
            new TransitCommand(larkmere::store, larkmere.sites()),
            new ExportManifestCommand(larkmere::store, larkmere.sites(), new WorkbookWriter()),
            new ReverseCommand(larkmere::store, larkmere.sites()),
            new ImportCommand(larkmere::store, larkmere.sites())
        };
    }
}
