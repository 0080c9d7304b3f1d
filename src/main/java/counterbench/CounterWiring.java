package counterbench;

import counterbench.db.Store;
import counterbench.sheets.poi.WorkbookWriter;
import counterbench.shell.CommandSet;
import counterbench.shell.SiteChoice;
import counterbench.shell.counter.CountCommand;
import counterbench.shell.counter.ExpiryCommand;
import counterbench.shell.counter.ExportCountSheetCommand;
import counterbench.shell.counter.KitArriveCommand;
import counterbench.shell.counter.KitIssueCommand;
import counterbench.shell.counter.KitListCommand;
import counterbench.shell.counter.KitReceiveCommand;
import counterbench.shell.counter.KitReturnCommand;
import counterbench.shell.counter.KitScrapCommand;
import counterbench.shell.counter.KitSendCommand;
import counterbench.shell.counter.KitShortCommand;
import counterbench.shell.counter.KitShowCommand;
import counterbench.shell.counter.NeedCommand;
import counterbench.shell.counter.PartArriveCommand;
import counterbench.shell.counter.PartIssueCommand;
import counterbench.shell.counter.PartReceiveCommand;
import counterbench.shell.counter.PartReturnCommand;
import counterbench.shell.counter.PartScrapCommand;
import counterbench.shell.counter.PartSendCommand;
import counterbench.shell.counter.TransitCommand;
import java.util.function.Supplier;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The parts counter: kits and loose parts in and out, and counted. */
@Configuration(proxyBeanMethods = false)
class CounterWiring {
    @Bean
    CommandSet counterCommands(ObjectProvider<Store> provider, SiteChoice sites) {
        Supplier<Store> store = provider::getObject;
        return new CommandSet(
                new KitReceiveCommand(store, sites),
                new KitIssueCommand(store, sites),
                new KitListCommand(store, sites),
                new KitShowCommand(store, sites),
                new KitShortCommand(store, sites),
                new KitSendCommand(store, sites),
                new KitArriveCommand(store, sites),
                new TransitCommand(store, sites),
                new KitReturnCommand(store, sites),
                new KitScrapCommand(store, sites),
                new PartReceiveCommand(store, sites),
                new PartIssueCommand(store, sites),
                new PartSendCommand(store, sites),
                new PartArriveCommand(store, sites),
                new PartReturnCommand(store, sites),
                new PartScrapCommand(store, sites),
                new CountCommand(store, sites),
                new ExpiryCommand(store, sites),
                new NeedCommand(store, sites),
                new ExportCountSheetCommand(store, sites, new WorkbookWriter()));
    }
}
