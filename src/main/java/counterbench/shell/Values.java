package counterbench.shell;

import counterbench.shared.Visible;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandOption;
import org.springframework.shell.core.command.ParsedInput;

/** What a command line said, as typed values. */
final class Values {
    private final Map<String, List<Object>> byLabel = new HashMap<>();
    private final List<String> wrong = new ArrayList<>();

    private Values() {}

    /**
     * The values that a command's line said.
     *
     * @throws UsageError with everything that is missing, repeated, too much or not readable
     */
    static Values of(Manual manual, ParsedInput input) {
        Values values = new Values();
        input.options().forEach(option -> values.takeOption(manual, option));
        values.takeArguments(manual, input.arguments());
        manual.parameters().forEach(values::checkSaid);
        if (!values.wrong.isEmpty()) {
            throw new UsageError(values.wrong);
        }
        return values;
    }

    private void takeOption(Manual manual, CommandOption said) {
        manual.options().stream()
                .filter(option -> option.name().equals(said.longName()))
                .forEach(option -> take(option, String.valueOf(said.value())));
    }

    private void takeArguments(Manual manual, List<CommandArgument> said) {
        List<Argument<?>> places = manual.arguments();
        for (int i = 0; i < said.size(); i++) {
            int place = Math.min(i, places.size() - 1);
            String text = said.get(i).value();
            if (place >= 0 && (place == i || places.get(place).repeatable())) {
                take(places.get(place), text);
            } else {
                wrong.add(stray(manual, text));
            }
        }
    }

    private static String stray(Manual manual, String text) {
        return "\""
                + Visible.text(text)
                + "\" is one word too many; "
                + (manual.parameters().isEmpty()
                        ? manual.name() + " takes none"
                        : "put text with blanks between quotes");
    }

    private void take(Parameter<?> parameter, String text) {
        try {
            byLabel.computeIfAbsent(parameter.label(), label -> new ArrayList<>())
                    .add(parameter.reading().read(text));
        } catch (Unreadable e) {
            wrong.add(parameter.label() + " \"" + Visible.text(text) + "\" " + e.getMessage());
        }
    }

    private void checkSaid(Parameter<?> parameter) {
        List<Object> said = byLabel.get(parameter.label());
        if (said == null && parameter.required()) {
            wrong.add(parameter.label() + " is missing: " + parameter.purpose());
        }
        if (said != null && said.size() > 1 && !parameter.repeatable()) {
            wrong.add(parameter.label() + " is said " + said.size() + " times; say it once");
        }
    }

    <T> List<T> all(Parameter<T> parameter) {
        @SuppressWarnings("unchecked") // the value came from this parameter's own reading
        List<T> said = (List<T>) byLabel.getOrDefault(parameter.label(), List.of());
        return said;
    }

    <T> Optional<T> find(Parameter<T> parameter) {
        return all(parameter).stream().findFirst();
    }
}
