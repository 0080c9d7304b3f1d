package counterbench.shell.labels;

import counterbench.facts.FactKind;
import counterbench.labels.Labelled;
import counterbench.labels.store.LabelBook;
import counterbench.shell.Proposals;
import counterbench.shell.acts.LiveNames;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/** Kinds of things that bear a name of their own and that a label can be put on. */
public enum NamedThing {
    /** A kit, by its serial. */
    KIT(
            new Words(
                    "kit",
                    "SERIAL",
                    "the site never received it",
                    "record its receipt first",
                    "label kit K-2207 K-2208"),
            FactKind.KITS,
            LiveNames::kits,
            LabelBook::kit,
            "The symbol says the kit's part number (240), serial (21), lot (10) and last day of use"
                    + " (17)."),
    /** A job, by its name. */
    JOB(
            new Words(
                    "job",
                    "JOB",
                    "the site has no such job",
                    "record it first",
                    "label job J-118 --copies 2"),
            FactKind.JOBS,
            LiveNames::jobs,
            LabelBook::job,
            "The symbol says the job's name (91, internal use)."),
    /** A removed core, by its tag. */
    CORE(
            new Words(
                    "core",
                    "TAG",
                    "no core of that tag was removed at the site",
                    "record its removal first",
                    "label core C-0412 --paper a4 --skip 5"),
            FactKind.CORES,
            LiveNames::cores,
            LabelBook::core,
            "The symbol says the core's tag (92, internal use).",
            "A label is no permission to ship: drain and plug by the maker's procedure first."),
    /** A shipment, by its name. */
    SHIPMENT(
            new Words(
                    "shipment",
                    "SHIPMENT",
                    "the site has no such shipment",
                    "record it first",
                    "label shipment S-031 --copies 2"),
            FactKind.SHIPMENTS,
            LiveNames::shipments,
            LabelBook::shipment,
            "Where the site has a GS1 company prefix (setup --company-prefix), the symbol says the"
                    + " shipment's SSCC (00), or else its name (93, internal use).",
            "Rules for fuel-wetted parts are the shipper's to check.");

    private final Words words;
    private final FactKind kind;
    private final Function<LiveNames, Proposals> names;
    private final BiFunction<LabelBook, String, Optional<? extends Labelled>> finding;
    private final List<String> notes;

    NamedThing(
            Words words,
            FactKind kind,
            Function<LiveNames, Proposals> names,
            BiFunction<LabelBook, String, Optional<? extends Labelled>> finding,
            String... notes) {
        this.words = words;
        this.kind = kind;
        this.names = names;
        this.finding = finding;
        this.notes = List.of(notes);
    }

    /**
     * How it is spoken of.
     *
     * @param name what the synopsis calls its name
     * @param unknown why there is no label of one that is not known
     * @param todo what to do about that
     */
    record Words(String word, String name, String unknown, String todo, String example) {}

    Words words() {
        return words;
    }

    /** Names that completion offers. */
    Proposals names(LiveNames live) {
        return names.apply(live);
    }

    List<String> notes() {
        return notes;
    }

    /**
     * The thing of that name.
     *
     * @throws counterbench.shared.Refused if there is none
     */
    Labelled named(String name, LabelBook book) {
        return KnownName.of(
                finding.apply(book, name),
                words.word(),
                name,
                words.unknown(),
                words.todo(),
                () -> book.names(kind));
    }
}
