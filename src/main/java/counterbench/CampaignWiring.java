package counterbench;

import counterbench.db.Store;
import counterbench.shell.CommandSet;
import counterbench.shell.SiteChoice;
import counterbench.shell.campaign.CampaignCheckCommand;
import counterbench.shell.campaign.CampaignListCommand;
import counterbench.shell.campaign.CampaignLoadCommand;
import counterbench.shell.campaign.CampaignProgressCommand;
import counterbench.shell.campaign.CampaignShowCommand;
import java.util.function.Supplier;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Campaigns and their packs. */
@Configuration(proxyBeanMethods = false)
class CampaignWiring {
    @Bean
    CommandSet campaignCommands(ObjectProvider<Store> provider, SiteChoice sites) {
        Supplier<Store> store = provider::getObject;
        return new CommandSet(
                new CampaignCheckCommand(),
                new CampaignLoadCommand(store, sites),
                new CampaignListCommand(store),
                new CampaignShowCommand(store),
                new CampaignProgressCommand(store));
    }
}
