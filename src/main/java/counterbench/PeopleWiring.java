package counterbench;

import counterbench.db.Store;
import counterbench.people.SignIn;
import counterbench.people.store.CheckPin;
import counterbench.shell.CommandSet;
import counterbench.shell.SiteChoice;
import counterbench.shell.people.PersonAddCommand;
import counterbench.shell.people.PersonEndCommand;
import counterbench.shell.people.PersonListCommand;
import counterbench.shell.people.PersonPinCommand;
import counterbench.shell.people.PersonRoleCommand;
import counterbench.shell.people.SetupCommand;
import counterbench.shell.people.ShipmentLimitCommand;
import counterbench.shell.people.SignInCommand;
import counterbench.shell.people.SignOutCommand;
import counterbench.shell.people.WhoCommand;
import java.time.InstantSource;
import java.util.function.Supplier;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Sites, people and signing in. */
@Configuration(proxyBeanMethods = false)
class PeopleWiring {
    @Bean
    SignIn signIn(ObjectProvider<Store> store, InstantSource clock) {
        return new CheckPin(store::getObject, clock);
    }

    @Bean
    CommandSet peopleCommands(ObjectProvider<Store> provider, SignIn signIn, SiteChoice sites) {
        Supplier<Store> store = provider::getObject;
        return new CommandSet(
                new SetupCommand(store),
                new ShipmentLimitCommand(store, sites),
                new SignInCommand(store, signIn, sites),
                new SignOutCommand(),
                new WhoCommand(sites),
                new PersonAddCommand(store, sites),
                new PersonListCommand(store, sites),
                new PersonPinCommand(store, signIn, sites),
                new PersonRoleCommand(store, sites),
                new PersonEndCommand(store, sites));
    }
}
