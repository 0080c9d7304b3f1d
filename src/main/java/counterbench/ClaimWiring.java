package counterbench;

import counterbench.db.Store;
import counterbench.shell.CommandSet;
import counterbench.shell.SiteChoice;
import counterbench.shell.claims.ClaimAgeingCommand;
import counterbench.shell.claims.ClaimDraftCommand;
import counterbench.shell.claims.ClaimListCommand;
import counterbench.shell.claims.ClaimShowCommand;
import counterbench.shell.claims.ClaimSubmitCommand;
import counterbench.shell.claims.ClaimWithdrawCommand;
import counterbench.shell.claims.CreditMatchCommand;
import java.util.function.Supplier;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The warranty desk. */
@Configuration(proxyBeanMethods = false)
class ClaimWiring {
    @Bean
    CommandSet claimCommands(ObjectProvider<Store> provider, SiteChoice sites) {
        Supplier<Store> store = provider::getObject;
        return new CommandSet(
                new ClaimDraftCommand(store, sites),
                new ClaimListCommand(store, sites),
                new ClaimShowCommand(store, sites),
                new ClaimSubmitCommand(store, sites),
                new ClaimWithdrawCommand(store, sites),
                new ClaimAgeingCommand(store, sites),
                new CreditMatchCommand(store, sites));
    }
}
