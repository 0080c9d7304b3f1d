package counterbench;

import counterbench.shell.CommandSet;
import counterbench.shell.demo.DemoCommand;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The demo, which knows nothing of the real store. */
@Configuration(proxyBeanMethods = false)
class DemoWiring {
    @Bean
    CommandSet demoCommands() {
        return new CommandSet(new DemoCommand());
    }
}
