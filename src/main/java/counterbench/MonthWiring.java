package counterbench;

import counterbench.db.Store;
import counterbench.shell.CommandSet;
import counterbench.shell.SiteChoice;
import counterbench.shell.month.BalanceCommand;
import counterbench.shell.month.ReconcileCommand;
import counterbench.shell.month.SealCommand;
import counterbench.shell.month.WorthCommand;
import java.util.function.Supplier;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The account of a month, and what lies where. */
@Configuration(proxyBeanMethods = false)
class MonthWiring {
    @Bean
    CommandSet monthCommands(ObjectProvider<Store> provider, SiteChoice sites) {
        Supplier<Store> store = provider::getObject;
        return new CommandSet(
                new ReconcileCommand(store, sites),
                new BalanceCommand(store, sites),
                new WorthCommand(store, sites),
                new SealCommand(store, sites));
    }
}
