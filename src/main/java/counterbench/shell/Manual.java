package counterbench.shell;

import java.util.List;
import java.util.stream.Stream;

/**
 * What a command says of itself. Help, completion and the reading of the command line all come from
 * here.
 *
 * @param name one or two words, such as {@code kit receive}
 * @param purpose what it does, in one line that begins with a verb
 * @param parameters its arguments in their order, and its options
 * @param examples command lines to copy
 * @param notes what else a person should know, a paragraph each
 */
public record Manual(
        String name,
        Group group,
        String purpose,
        List<Parameter<?>> parameters,
        List<String> examples,
        List<String> notes) {
    public Manual {
        parameters = List.copyOf(parameters);
        examples = List.copyOf(examples);
        notes = List.copyOf(notes);
    }

    /** A command that takes nothing. */
    public static Manual of(String name, Group group, String purpose) {
        return new Manual(name, group, purpose, List.of(), List.of(), List.of());
    }

    /** The same, taking these as well. */
    public Manual takes(Parameter<?>... more) {
        return new Manual(name, group, purpose, with(parameters, List.of(more)), examples, notes);
    }

    /** The same, printing rows in the format that the person chooses. */
    public Manual printsRows() {
        return takes(Options.FORMAT);
    }

    /** The same, with a command line to copy. */
    public Manual example(String line) {
        return new Manual(name, group, purpose, parameters, with(examples, List.of(line)), notes);
    }

    /** The same, with another paragraph. */
    public Manual note(String paragraph) {
        return new Manual(
                name, group, purpose, parameters, examples, with(notes, List.of(paragraph)));
    }

    /** The arguments, in their order. */
    public List<Argument<?>> arguments() {
        return parameters.stream()
                .<Argument<?>>mapMulti(
                        (p, each) -> {
                            if (p instanceof Argument<?> argument) {
                                each.accept(argument);
                            }
                        })
                .toList();
    }

    /** The options. */
    public List<Option<?>> options() {
        return parameters.stream()
                .<Option<?>>mapMulti(
                        (p, each) -> {
                            if (p instanceof Option<?> option) {
                                each.accept(option);
                            }
                        })
                .toList();
    }

    private static <T> List<T> with(List<T> those, List<? extends T> more) {
        return Stream.concat(those.stream(), more.stream()).toList();
    }
}
