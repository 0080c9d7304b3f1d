package counterbench.shell.console;

import counterbench.shell.Argument;
import counterbench.shell.Commands;
import counterbench.shell.Completing;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Parameter;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What may come next on the line of a command that is known already. */
final class ParameterOffers {
    private final Manual manual;
    private final List<String> words;
    private final String begun;
    private final Optional<String> site;

    ParameterOffers(
            Commands.Match match, List<String> before, String begun, Optional<String> site) {
        this.site = site;
        this.manual = match.command().manual();
        this.words = before.subList(match.words(), before.size());
        this.begun = begun;
    }

    Stream<Offer> offers() {
        Optional<Option<?>> open = words.isEmpty() ? Optional.empty() : valued(last());
        if (open.isPresent()) {
            return values(open.get(), begun, "");
        }
        int equals = begun.indexOf('=');
        if (begun.startsWith("--") && equals > 0) {
            String label = begun.substring(0, equals);
            return valued(label).stream()
                    .flatMap(o -> values(o, begun.substring(equals + 1), label + "="));
        }
        return begun.startsWith("-") ? options() : Stream.concat(argument(), options());
    }

    private String last() {
        return words.get(words.size() - 1);
    }

    private Optional<Option<?>> valued(String label) {
        return manual.options().stream()
                .filter(option -> option.label().equals(label) && !option.isFlag())
                .findFirst();
    }

    private Stream<Offer> options() {
        Stream<Offer> own =
                manual.options().stream()
                        .filter(option -> option.repeatable() || !isSaid(option))
                        .map(option -> new Offer(option.label(), option.purpose()));
        return begun.startsWith("-")
                ? Stream.concat(own, Stream.of(new Offer("--help", "explains the command")))
                : own;
    }

    private boolean isSaid(Option<?> option) {
        return words.stream()
                .anyMatch(w -> w.equals(option.label()) || w.startsWith(option.label() + "="));
    }

    private Stream<Offer> argument() {
        List<Argument<?>> places = manual.arguments();
        int place = Math.min(argumentsSaid(), places.size() - 1);
        boolean open = place >= 0 && (place == argumentsSaid() || places.get(place).repeatable());
        return open ? values(places.get(place), begun, "") : Stream.empty();
    }

    private int argumentsSaid() {
        int said = 0;
        for (int i = 0; i < words.size(); i++) {
            boolean value = i > 0 && valued(words.get(i - 1)).isPresent();
            said += value || words.get(i).startsWith("--") ? 0 : 1;
        }
        return said;
    }

    /** Live values come from the store, which may be locked or gone: then nothing is offered. */
    private Stream<Offer> values(Parameter<?> parameter, String value, String before) {
        try {
            List<String> line = Stream.concat(words.stream(), Stream.of(value)).toList();
            return parameter.proposed(new Completing(line, value, site)).stream()
                    .map(proposal -> new Offer(before + proposal, ""));
        } catch (RuntimeException e) {
            return Stream.empty();
        }
    }
}
