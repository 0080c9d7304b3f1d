package counterbench;

import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

/** All features put together. Each has a wiring of its own, named here. */
@Configuration(proxyBeanMethods = false)
@Import({
    ShellWiring.class,
    StoreWiring.class,
    PeopleWiring.class,
    CareWiring.class,
    CampaignWiring.class,
    IntakeWiring.class,
    ReviewWiring.class,
    MonthWiring.class,
    ExportWiring.class,
    CounterWiring.class,
    BenchWiring.class,
    LabelWiring.class,
    RackWiring.class,
    ClaimWiring.class,
    DemoWiring.class
})
class Wiring {}
