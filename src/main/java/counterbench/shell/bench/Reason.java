package counterbench.shell.bench;

import counterbench.shared.Refused;
import counterbench.shell.Invocation;
import java.util.Optional;

/** Why something was done: as the line says, or as the person says when asked. */
final class Reason {
    private Reason() {}

    /**
     * The reason.
     *
     * @throws Refused if none is given
     */
    static String of(Invocation in) {
        return in.find(BenchOptions.REASON)
                .or(() -> in.isScreen() ? in.ask("Why? ") : Optional.empty())
                .map(String::strip)
                .filter(reason -> !reason.isEmpty())
                .orElseThrow(
                        () ->
                                new Refused(
                                        in.commandName(),
                                        "it does not say why",
                                        "add --reason with a few words"));
    }
}
