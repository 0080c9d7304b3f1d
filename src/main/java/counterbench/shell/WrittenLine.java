package counterbench.shell;

import counterbench.shared.TypedWord;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandOption;
import org.springframework.shell.core.command.ParsedInput;

/** A command line put together again, so that it can be written down and typed once more. */
final class WrittenLine {
    private static final Pattern PLAIN = Pattern.compile("[^\\s\"'\\\\#-][^\\s\"'\\\\]*");

    private WrittenLine() {}

    static String of(Manual manual, ParsedInput input) {
        List<String> words = new ArrayList<>(List.of(manual.name()));
        for (CommandArgument argument : input.arguments()) {
            words.add(quoted(argument.value()));
        }
        for (CommandOption option : input.options()) {
            words.add("--" + option.longName());
            boolean flag =
                    manual.options().stream()
                            .anyMatch(o -> o.isFlag() && o.name().equals(option.longName()));
            if (!flag) {
                words.add(quoted(String.valueOf(option.value())));
            }
        }
        return String.join(" ", words);
    }

    private static String quoted(String word) {
        return PLAIN.matcher(word).matches() ? word : TypedWord.quoted(word);
    }
}
