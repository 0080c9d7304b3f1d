package counterbench;

import counterbench.db.Store;
import counterbench.printing.Printer;
import counterbench.shell.CommandSet;
import counterbench.shell.SiteChoice;
import counterbench.shell.bench.BenchCommand;
import counterbench.shell.bench.FitCommand;
import counterbench.shell.bench.JobCompleteCommand;
import counterbench.shell.bench.JobListCommand;
import counterbench.shell.bench.JobOpenCommand;
import counterbench.shell.bench.JobSheetCommand;
import counterbench.shell.bench.JobShowCommand;
import counterbench.shell.bench.MarkCommand;
import counterbench.shell.bench.PutBackCommand;
import counterbench.shell.bench.RefitCommand;
import counterbench.shell.bench.ScrapCommand;
import counterbench.shell.bench.TakeOffCommand;
import java.util.function.Supplier;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The bench: jobs, hardware, steps. */
@Configuration(proxyBeanMethods = false)
class BenchWiring {
    @Bean
    CommandSet benchCommands(
            ObjectProvider<Store> provider, SiteChoice sites, ObjectProvider<Printer> printer) {
        Supplier<Store> store = provider::getObject;
        return new CommandSet(
                new JobOpenCommand(store, sites),
                new JobListCommand(store, sites),
                new JobShowCommand(store, sites),
                new JobSheetCommand(store, sites, printer::getObject),
                new JobCompleteCommand(store, sites),
                new FitCommand(store, sites),
                new RefitCommand(store, sites),
                new TakeOffCommand(store, sites),
                new PutBackCommand(store, sites),
                new ScrapCommand(store, sites),
                new MarkCommand(store, sites),
                new BenchCommand(store, sites));
    }
}
