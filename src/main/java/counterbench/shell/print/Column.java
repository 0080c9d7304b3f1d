package counterbench.shell.print;

import java.util.Objects;

/**
 * One column of rows.
 *
 * @param key the word that programs rely on
 * @param number whether it holds numbers, which stand at the right
 * @param need whether a table may leave it out where lines are too short for all columns
 * @param least characters for which it has room in any table, whatever its first rows hold; zero
 *     where the rows decide
 */
public record Column(String key, boolean number, Need need, int least) {
    /** How much a table needs a column; where lines are too short, the least needed goes first. */
    public enum Need {
        /** A detail that people look up elsewhere. */
        DETAIL,
        /** Good to see. */
        SPARE,
        /** A row says nothing without it. */
        KEPT
    }

    public Column {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(need, "need");
    }

    /** A column of words. */
    public static Column text(String key) {
        return new Column(key, false, Need.KEPT, 0);
    }

    /** A column of quantities, amounts or counts. */
    public static Column number(String key) {
        return new Column(key, true, Need.KEPT, 0);
    }

    /** The same, but left out of a table whose lines are too short for all columns. */
    public Column asSpare() {
        return new Column(key, number, Need.SPARE, least);
    }

    /** The same, but left out before all spare ones. */
    public Column asDetail() {
        return new Column(key, number, Need.DETAIL, least);
    }

    /** The same with room for so many characters: a long table begins before its last rows come. */
    public Column withRoomFor(int characters) {
        return new Column(key, number, need, characters);
    }

    /** Whether a table may leave it out. */
    boolean isSpare() {
        return need != Need.KEPT;
    }

    /** What stands above it in a table. */
    public String heading() {
        return key.replace('_', ' ');
    }
}
