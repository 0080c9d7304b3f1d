package counterbench.shell.console;

import counterbench.people.Person;
import counterbench.shell.Session;

/** The prompt that needs nothing but the session: the site chosen and who is signed in. */
public record SessionPrompt(Session session) implements PromptText {
    @Override
    public String text() {
        String site = session.site().map(s -> s + " ").orElse("");
        return site + session.person().map(Person::name).orElse("counterbench") + "> ";
    }
}
