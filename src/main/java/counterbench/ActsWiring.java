package counterbench;

import counterbench.db.Store;
import counterbench.shell.CommandSet;
import counterbench.shell.SiteChoice;
import counterbench.shell.counter.KitIssueCommand;
import java.util.function.Supplier;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Recording as it happens. */
@Configuration(proxyBeanMethods = false)
class ActsWiring {
    @Bean
    CommandSet counterCommands(ObjectProvider<Store> provider, SiteChoice sites) {
        Supplier<Store> store = provider::getObject;
        return new CommandSet(new KitIssueCommand(store, sites));
    }
}
