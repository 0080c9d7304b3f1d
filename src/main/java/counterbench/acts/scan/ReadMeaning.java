package counterbench.acts.scan;

import counterbench.acts.Situation;
import counterbench.acts.bench.Measured;
import counterbench.campaign.Pack;
import counterbench.campaign.Step;
import counterbench.labels.Goods;
import counterbench.labels.Scan;
import counterbench.labels.ScanReader;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import counterbench.shared.Visible;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Finds out what a line means at a bench, in this order: a word of the loop; a label; a reading,
 * unless it is a name that is known here; a step, a part, a kit, a core, an instrument by name; and
 * at last, a label from a scanner that sends no prefix.
 */
public final class ReadMeaning {
    private static final Pattern BLANKS = Pattern.compile("[ \\t]+");
    private static final Pattern BARE_NUMBER = Pattern.compile("[+-]?[0-9.]+");

    private final Bench bench;
    private final Situation situation;
    private final ScanReader labels;

    public ReadMeaning(Bench bench, int year) {
        this.bench = bench;
        this.situation = bench.situation();
        this.labels = new ScanReader(year);
    }

    /**
     * Kits and cores that a line may name, so that they can be looked up before it is read.
     *
     * @param year the year in which it is read, which tells a label's century
     */
    public static Set<String> names(String line, int year) {
        Set<String> names = new TreeSet<>();
        for (String word : words(line)) {
            names.add(word);
            try {
                names(new ScanReader(year).read(word), names);
            } catch (Refused e) {
                // A label that cannot be read names nothing; reading it for good says why.
            }
        }
        names.remove("");
        return names;
    }

    private static void names(Scan scan, Set<String> names) {
        if (scan instanceof Scan.Kit kit) {
            names.add(kit.serial());
        } else if (scan instanceof Scan.Plain plain) {
            plain.unmarked().ifPresent(unmarked -> names(unmarked, names));
        } else if (scan instanceof Scan.Core core) {
            names.add(core.tag());
        }
    }

    static List<String> words(String line) {
        return Arrays.asList(BLANKS.split(line.strip()));
    }

    /**
     * What a line means.
     *
     * @throws Refused if it means nothing here
     */
    public Meaning read(String line) {
        String text = line.strip();
        if (text.isEmpty()) {
            return new Meaning.Nothing();
        }
        List<String> words = words(text);
        Optional<Word> word = Word.of(words.get(0));
        if (word.isPresent()) {
            return new Meaning.Command(word.get(), text.substring(words.get(0).length()).strip());
        }
        return meant(text, words).or(() -> unmarked(text)).orElseThrow(() -> unknown(text));
    }

    /** What a label or a name means. */
    Optional<Meaning> meant(String text, List<String> words) {
        Scan scan = labels.read(words.size() == 1 ? text : words.get(0));
        if (!(scan instanceof Scan.Plain)) {
            return Optional.of(ofLabel(text, scan, words));
        }
        Optional<Measured> reading = Measured.of(text);
        if (reading.isPresent()
                && (BARE_NUMBER.matcher(text).matches() || named(words).isEmpty())) {
            return reading.map(Meaning.Reading::new);
        }
        return named(words);
    }

    private Meaning ofLabel(String text, Scan scan, List<String> words) {
        if (scan instanceof Scan.Kit kit) {
            return new Meaning.Kit(kit.serial());
        } else if (scan instanceof Scan.Part part) {
            return part(number(text, part.goods()), words, part.goods().lot());
        } else if (scan instanceof Scan.Core core) {
            return new Meaning.Core(core.tag());
        } else if (scan instanceof Scan.Job job) {
            return new Meaning.OtherJob(job.job());
        }
        throw new Refused(
                "scan \"" + Visible.text(text) + "\"",
                "shipments are no matter of the bench",
                "scan a kit, a part, a core or a step");
    }

    private static String number(String text, Goods goods) {
        return goods.partNumber()
                .orElseThrow(
                        () ->
                                new Refused(
                                        "scan \"" + Visible.text(text) + "\"",
                                        "the label does not say the part number",
                                        "type it"));
    }

    private Meaning.Part part(String part, List<String> words, @Nullable String lot) {
        List<String> behind = words.subList(1, words.size());
        return new Meaning.Part(part, Amount.alone(part, bench.partUnit(part), behind), lot);
    }

    private Optional<Meaning> named(List<String> words) {
        String first = words.get(0);
        List<String> rest = words.subList(1, words.size());
        if (steps().contains(first)) {
            return Measured.row(rest).map(readings -> new Meaning.OfStep(first, readings));
        }
        if (situation.terms().partUnits().containsKey(first)
                && (rest.isEmpty() || Amount.of(rest).isPresent())) {
            return Optional.of(part(first, words, null));
        }
        return rest.isEmpty() ? alone(first) : Optional.empty();
    }

    private Optional<Meaning> alone(String name) {
        if (situation.findKit(name).isPresent()) {
            return Optional.of(new Meaning.Kit(name));
        }
        if (situation.findCore(name).isPresent()) {
            return Optional.of(new Meaning.Core(name));
        }
        if (situation.terms().instruments().containsKey(name)) {
            return Optional.of(new Meaning.Instrument(name));
        }
        return name.equals(bench.name())
                ? Optional.of(new Meaning.OtherJob(name))
                : Optional.empty();
    }

    /** A scanner that sends no prefix: only what is known then counts. */
    private Optional<Meaning> unmarked(String text) {
        if (labels.read(text) instanceof Scan.Plain plain && plain.unmarked().isPresent()) {
            Scan scan = plain.unmarked().get();
            boolean known =
                    scan instanceof Scan.Kit kit
                            ? situation.findKit(kit.serial()).isPresent()
                            : scan instanceof Scan.Part part
                                    ? part.goods()
                                            .partNumber()
                                            .filter(situation.terms().partUnits()::containsKey)
                                            .isPresent()
                                    : scan instanceof Scan.Core core
                                            && situation.findCore(core.tag()).isPresent();
            return known ? Optional.of(ofLabel(text, scan, List.of(text))) : Optional.empty();
        }
        return Optional.empty();
    }

    private List<String> steps() {
        return bench.job().pack().stream()
                .map(Pack::procedure)
                .flatMap(List::stream)
                .map(Step::id)
                .toList();
    }

    private Refused unknown(String text) {
        List<String> words = words(text);
        if (words.size() > 1 && situation.terms().partUnits().containsKey(words.get(0))) {
            return Amount.stray(words.get(0), words.subList(1, words.size()));
        }
        List<String> known = new ArrayList<>(steps());
        known.addAll(situation.terms().partUnits().keySet());
        known.addAll(situation.terms().instruments().keySet());
        bench.job().cores().forEach(core -> known.add(core.core()));
        known.addAll(bench.job().kits());
        known.addAll(Word.all());
        return new Refused(
                "scan \"" + Visible.text(text) + "\"",
                "it is no kit, part, core, step, instrument or reading that is known here",
                NearMatch.of(words.get(0), known)
                        .map(near -> "did you mean " + near + "?")
                        .orElse(
                                words.size() == 1
                                        ? "scan it again, or type help"
                                        : "type help for the words of the loop; commands of the"
                                                + " shell come after quit"));
    }
}
