package counterbench;

import counterbench.db.Store;
import counterbench.shell.Circumstances;
import counterbench.shell.CommandSet;
import counterbench.shell.SiteChoice;
import counterbench.shell.console.PromptText;
import counterbench.shell.review.FindingSettleCommand;
import counterbench.shell.review.FindingShowCommand;
import counterbench.shell.review.ReviewCommand;
import counterbench.shell.review.StopsPrompt;
import java.time.InstantSource;
import java.util.function.Supplier;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Reviewing, and settling what was found. */
@Configuration(proxyBeanMethods = false)
class ReviewWiring {
    @Bean
    PromptText prompt(
            Circumstances circumstances, ObjectProvider<Store> store, InstantSource clock) {
        return new StopsPrompt(circumstances.session(), store::getObject, clock);
    }

    @Bean
    CommandSet reviewCommands(ObjectProvider<Store> provider, SiteChoice sites) {
        Supplier<Store> store = provider::getObject;
        return new CommandSet(
                new ReviewCommand(store, sites),
                new FindingShowCommand(store, sites),
                new FindingSettleCommand(store, sites));
    }
}
