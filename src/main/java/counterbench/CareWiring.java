package counterbench;

import counterbench.care.store.Backups;
import counterbench.db.Migrations;
import counterbench.db.Store;
import counterbench.db.StoreAddress;
import counterbench.home.Home;
import counterbench.shared.Progress;
import counterbench.shell.CommandSet;
import counterbench.shell.SiteChoice;
import counterbench.shell.care.BackupCommand;
import counterbench.shell.care.CheckHomeCommand;
import counterbench.shell.care.JournalShowCommand;
import counterbench.shell.care.JournalVerifyCommand;
import counterbench.shell.care.RestoreCommand;
import counterbench.shell.care.ReverseCommand;
import java.time.InstantSource;
import java.util.function.Supplier;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The care of the journal, the store and the home folder. */
@Configuration(proxyBeanMethods = false)
class CareWiring {
    @Bean
    Backups backups(Home home) {
        return new Backups(home.location().resolve("backups"));
    }

    /** A backup is written before tables that hold something are changed. */
    @Bean
    Migrations migrations(ObjectProvider<Backups> backups, InstantSource clock) {
        return new Migrations(
                (store, from) ->
                        backups.getObject().write(store, clock.instant(), Progress.SILENT));
    }

    @Bean
    CommandSet careCommands(
            ObjectProvider<Store> provider,
            ObjectProvider<StoreAddress> address,
            ObjectProvider<Backups> backups,
            SiteChoice sites) {
        Supplier<Store> store = provider::getObject;
        return new CommandSet(
                new JournalShowCommand(store, sites),
                new JournalVerifyCommand(store, sites),
                new ReverseCommand(store, sites),
                new BackupCommand(store, backups::getObject),
                new RestoreCommand(address::getObject),
                new CheckHomeCommand(address::getObject, backups::getObject));
    }
}
