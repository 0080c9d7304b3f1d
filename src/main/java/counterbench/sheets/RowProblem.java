package counterbench.sheets;

import counterbench.shared.Problem;
import java.util.Objects;

/**
 * Why a row cannot be taken.
 *
 * @param heading the heading of the cell concerned; empty if it is the row as a whole
 * @param value the cell's text; empty if it has none
 * @param wrong what is wrong with it
 * @param right what would be right
 */
public record RowProblem(RowPosition at, String heading, String value, String wrong, String right) {
    public RowProblem {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(heading, "heading");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(wrong, "wrong");
        Objects.requireNonNull(right, "right");
    }

    /**
     * The problem as a refusal: {@code uses.csv, row 12, quantity "1,5": has a comma; write 1.5}.
     */
    public Problem problem() {
        return new Problem(at.shown() + place(), wrong, right);
    }

    /** What is written beside the row: {@code quantity "1,5": has a comma; write 1.5}. */
    public String reason() {
        String reason = place().isEmpty() ? wrong : place().substring(2) + ": " + wrong;
        return right.isEmpty() ? reason : reason + "; " + right;
    }

    private String place() {
        String place = heading.isEmpty() ? "" : ", " + heading;
        return value.isEmpty() ? place : place + " " + Text.quoted(value);
    }
}
