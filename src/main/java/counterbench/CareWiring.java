package counterbench;

import counterbench.db.Migrations;
import counterbench.db.Store;
import counterbench.shell.CommandSet;
import counterbench.shell.SiteChoice;
import counterbench.shell.care.JournalShowCommand;
import counterbench.shell.care.JournalVerifyCommand;
import java.util.function.Supplier;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The care of the journal, the store and the home folder. */
@Configuration(proxyBeanMethods = false)
class CareWiring {
    @Bean
    Migrations migrations() {
        return new Migrations((store, from) -> {});
    }

    @Bean
    CommandSet careCommands(ObjectProvider<Store> provider, SiteChoice sites) {
        Supplier<Store> store = provider::getObject;
        return new CommandSet(
                new JournalShowCommand(store, sites), new JournalVerifyCommand(store, sites));
    }
}
