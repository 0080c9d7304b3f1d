package counterbench;

import counterbench.db.Store;
import counterbench.printing.Printer;
import counterbench.printing.pdf.PdfPrinter;
import counterbench.shell.CommandSet;
import counterbench.shell.SiteChoice;
import counterbench.shell.labels.LabelNamedCommand;
import counterbench.shell.labels.LabelPartCommand;
import counterbench.shell.labels.LabelPress;
import counterbench.shell.labels.NamedThing;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Labels, and what else goes to a printer. */
@Configuration(proxyBeanMethods = false)
class LabelWiring {
    @Bean
    Printer printer() {
        return new PdfPrinter();
    }

    @Bean
    CommandSet labelCommands(
            ObjectProvider<Store> provider, SiteChoice sites, ObjectProvider<Printer> printer) {
        LabelPress press = new LabelPress(provider::getObject, sites, printer::getObject);
        return new CommandSet(
                new LabelNamedCommand(NamedThing.KIT, press),
                new LabelNamedCommand(NamedThing.JOB, press),
                new LabelNamedCommand(NamedThing.CORE, press),
                new LabelNamedCommand(NamedThing.SHIPMENT, press),
                new LabelPartCommand(press));
    }
}
