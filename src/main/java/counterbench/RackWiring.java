package counterbench;

import counterbench.db.Store;
import counterbench.sheets.poi.WorkbookWriter;
import counterbench.shell.CommandSet;
import counterbench.shell.SiteChoice;
import counterbench.shell.rack.AcknowledgeCommand;
import counterbench.shell.rack.CoreArriveCommand;
import counterbench.shell.rack.CoreRemoveCommand;
import counterbench.shell.rack.CoreSendCommand;
import counterbench.shell.rack.DrainBeginCommand;
import counterbench.shell.rack.DrainEndCommand;
import counterbench.shell.rack.ExportManifestCommand;
import counterbench.shell.rack.PackCommand;
import counterbench.shell.rack.PlugCommand;
import counterbench.shell.rack.RackCommand;
import counterbench.shell.rack.ShipCommand;
import counterbench.shell.rack.ShipmentAddCommand;
import counterbench.shell.rack.ShipmentOpenCommand;
import counterbench.shell.rack.ShipmentShowCommand;
import counterbench.shell.rack.ShipmentTakeOffCommand;
import counterbench.shell.rack.UnplugCommand;
import java.util.function.Supplier;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The core rack. */
@Configuration(proxyBeanMethods = false)
class RackWiring {
    @Bean
    CommandSet rackCommands(ObjectProvider<Store> provider, SiteChoice sites) {
        Supplier<Store> store = provider::getObject;
        return new CommandSet(
                new CoreRemoveCommand(store, sites),
                new CoreSendCommand(store, sites),
                new CoreArriveCommand(store, sites),
                new DrainBeginCommand(store, sites),
                new DrainEndCommand(store, sites),
                new PlugCommand(store, sites),
                new UnplugCommand(store, sites),
                new PackCommand(store, sites),
                new RackCommand(store, sites),
                new ShipmentOpenCommand(store, sites),
                new ShipmentAddCommand(store, sites),
                new ShipmentTakeOffCommand(store, sites),
                new ShipCommand(store, sites),
                new ShipmentShowCommand(store, sites),
                new AcknowledgeCommand(store, sites),
                new ExportManifestCommand(store, sites, new WorkbookWriter()));
    }
}
