package counterbench.acts.scan;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The words of the loop. */
public enum Word {
    FIT("PART [QUANTITY]", "fit a new part; its label alone does the same"),
    REFIT("PART [QUANTITY] WHY", "an old part went on again"),
    TAKE_OFF("PART [QUANTITY] [new|reused]", "a part came off again"),
    PUT_BACK("PART|KIT [QUANTITY]", "what was not needed goes back"),
    SCRAP("PART [QUANTITY] WHY", "a part of the bench is damaged"),
    MARK("STEP [READING]...", "mark a step; its name alone does the same"),
    AGAIN("STEP [FASTENER]", "read a step again that is marked already"),
    WITH("INSTRUMENT", "what is read from now on"),
    CORE("TAG SERIAL [PART]", "a unit was taken off the vehicle"),
    DRAIN("[begin|end] [TAG]", "the core drains, or has drained"),
    PLUG("[NUMBER] [TAG]", "plugs went into the core"),
    UNPLUG("[NUMBER] [TAG]", "plugs came out of it"),
    PACK("PACKAGING [TAG]", "the core is packed"),
    UNDO("[WHY]", "take back your last act on this job"),
    WHERE("", "how the job stands"),
    DONE("[anyway]", "complete the job"),
    HELP("", "these words"),
    QUIT("", "leave; the job stays as it is"),
    STOP("", "the same as quit");

    private final String takes;
    private final String purpose;

    Word(String takes, String purpose) {
        this.takes = takes;
        this.purpose = purpose;
    }

    /** As it is typed, or printed on a card to be scanned. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** How it is used, for help. */
    public String form() {
        return takes.isEmpty() ? word() : word() + " " + takes;
    }

    /** What it does, for help. */
    public String purpose() {
        return purpose;
    }

    /** The word that a text is, in any letter case. */
    public static Optional<Word> of(String text) {
        String plain = text.toLowerCase(Locale.ROOT);
        if (plain.equals("?")) {
            return Optional.of(HELP);
        }
        return Arrays.stream(values()).filter(word -> word.word().equals(plain)).findFirst();
    }

    /** All of them as they are typed. */
    public static List<String> all() {
        return Arrays.stream(values()).map(Word::word).toList();
    }
}
