package counterbench;

import counterbench.db.Migrations;
import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.home.Home;
import counterbench.home.Surroundings;
import counterbench.shell.SiteChoice;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The store, opened when first asked for and closed at the end. */
@Configuration(proxyBeanMethods = false)
class StoreWiring {
    /** Names the server that holds the store; without it the store lies in the home folder. */
    static final String STORE_VARIABLE = "COUNTERBENCH_STORE";

    @Bean
    StoreAddress storeAddress(Home home, Surroundings surroundings) {
        String server = surroundings.variable(STORE_VARIABLE).orElse(null);
        return StoreAddress.of(server == null ? home.folder() : home.location(), server);
    }

    @Bean
    Store store(StoreAddress address, Migrations migrations) {
        return Store.open(address, migrations);
    }

    @Bean
    SiteChoice siteChoice(ObjectProvider<Store> store) {
        return new SiteChoice(store::getObject);
    }
}
