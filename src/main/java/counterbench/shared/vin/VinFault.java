package counterbench.shared.vin;

import java.util.Objects;

/**
 * One reason why a VIN is not one.
 *
 * @param reason what kind of fault
 * @param because the fault in words, with the offending length, character or digit
 */
public record VinFault(Reason reason, String because) {
    public VinFault {
        Objects.requireNonNull(reason, "reason");
        Objects.requireNonNull(because, "because");
    }

    /** The kinds of fault, in the order in which they are told. */
    public enum Reason {
        /** Not seventeen characters. */
        LENGTH,
        /** I, O or Q, which no VIN has because they look like 1 and 0. */
        FORBIDDEN_LETTER,
        /** Neither a letter nor a digit. */
        OTHER_CHARACTER,
        /** Position 9 does not follow from the others. */
        CHECK_DIGIT
    }
}
