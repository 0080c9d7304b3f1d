package counterbench.campaign;

import java.util.Locale;

/** What a step asks of the technician. */
public enum StepKind {
    /** Cautions to be read. */
    SAFETY,
    /** Done, with nothing to measure. */
    SIGN,
    /** One torque for each fastener. */
    TORQUE,
    /** A length of time. */
    WAIT,
    /** One measured value. */
    READING;

    /** The word that packs use. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
