package counterbench;

import counterbench.db.Store;
import counterbench.month.sheet.BookKind;
import counterbench.sheets.poi.WorkbookWriter;
import counterbench.sheets.report.WorkbookSink;
import counterbench.shell.CommandSet;
import counterbench.shell.SiteChoice;
import counterbench.shell.campaign.ExportCampaignCommand;
import counterbench.shell.month.ExportMonthCommand;
import java.util.function.Supplier;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Workbooks out. */
@Configuration(proxyBeanMethods = false)
class ExportWiring {
    @Bean
    CommandSet exportCommands(ObjectProvider<Store> provider, SiteChoice sites) {
        Supplier<Store> store = provider::getObject;
        WorkbookSink sink = new WorkbookWriter();
        return new CommandSet(
                new ExportMonthCommand(BookKind.PARTS, store, sites, sink),
                new ExportMonthCommand(BookKind.WARRANTY, store, sites, sink),
                new ExportCampaignCommand(store, sites, sink));
    }
}
