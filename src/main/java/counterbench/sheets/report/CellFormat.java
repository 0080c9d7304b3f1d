package counterbench.sheets.report;

/** How the cells of a column are written. */
public enum CellFormat {
    /** Text on one line; identifiers, too, whatever they look like. */
    TEXT(Group.TEXT, 12),
    /** Longer text, on as many lines as it needs. */
    NOTE(Group.TEXT, 48),
    /** A day. */
    DATE(Group.TIME, 12),
    /** A day and time of the site. */
    TIME(Group.TIME, 17),
    /** An exact decimal with as many places as it has. */
    QUANTITY(Group.NUMBER, 10),
    /** Money with the places of the site's currency. */
    MONEY(Group.NUMBER, 13),
    /** A whole number. */
    INTEGER(Group.NUMBER, 10),
    /** A share: 0.3 is shown as 30.0%. */
    PERCENT(Group.NUMBER, 10);

    /** Which formats may stand for one another. */
    enum Group {
        TEXT,
        TIME,
        NUMBER
    }

    private final Group group;
    private final int usualWidth;

    CellFormat(Group group, int usualWidth) {
        this.group = group;
        this.usualWidth = usualWidth;
    }

    /** Whether cells are numbers, and can be summed. */
    public boolean isNumber() {
        return group == Group.NUMBER;
    }

    /** Whether cells are texts. */
    public boolean isText() {
        return group == Group.TEXT;
    }

    /** Whether cells are days or times. */
    public boolean isTime() {
        return group == Group.TIME;
    }

    /** The least width, in characters, of a column that does not say its own. */
    public int usualWidth() {
        return usualWidth;
    }

    /** Whether values of the other format can be written in this one; everything can as text. */
    boolean takes(CellFormat other) {
        return group == Group.TEXT || group == other.group;
    }
}
