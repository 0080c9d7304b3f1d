package counterbench;

import counterbench.db.Store;
import counterbench.shell.CommandSet;
import counterbench.shell.SiteChoice;
import counterbench.shell.intake.ImportCommand;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Taking in paper. */
@Configuration(proxyBeanMethods = false)
class IntakeWiring {
    @Bean
    CommandSet intakeCommands(ObjectProvider<Store> store, SiteChoice sites) {
        return new CommandSet(new ImportCommand(store::getObject, sites));
    }
}
