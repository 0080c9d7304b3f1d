package counterbench.shell.console;

import counterbench.shell.BaseCommand;
import counterbench.shell.Commands;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;

/** Offers what may come next on a line: words of command names, options, and their live values. */
final class Completion implements Completer {
    private final Commands commands;
    private final Supplier<Optional<String>> site;

    /**
     * @param site the site that is chosen now
     */
    Completion(Commands commands, Supplier<Optional<String>> site) {
        this.commands = commands;
        this.site = site;
    }

    @Override
    public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
        List<String> words = new ArrayList<>(line.words().subList(0, line.wordIndex()));
        String begun = line.word().substring(0, Math.min(line.wordCursor(), line.word().length()));
        candidates.addAll(offers(words, begun).map(Offer::toCandidate).toList());
    }

    /** What may stand where the begun word stands, after these words. */
    Stream<Offer> offers(List<String> before, String begun) {
        Stream<Offer> ofCommand =
                commands.at(before)
                        .map(
                                match ->
                                        new ParameterOffers(match, before, begun, site.get())
                                                .offers())
                        .orElseGet(Stream::empty);
        return Stream.concat(names(before), ofCommand);
    }

    private Stream<Offer> names(List<String> before) {
        return commands.all().stream()
                .filter(command -> continues(command.words(), before))
                .map(command -> offer(command, before.size()))
                .distinct();
    }

    private static boolean continues(List<String> name, List<String> before) {
        return name.size() > before.size() && name.subList(0, before.size()).equals(before);
    }

    private static Offer offer(BaseCommand command, int place) {
        boolean last = place == command.words().size() - 1;
        return new Offer(command.words().get(place), last ? command.manual().purpose() : "");
    }
}
