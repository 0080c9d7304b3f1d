package counterbench.sheets;

/** The bounds of a sheet in the formats of spreadsheets (ECMA-376 programs hold to them). */
public final class SheetLimits {
    /** Columns of a sheet. */
    public static final int COLUMNS = 16_384;

    /** Rows of a sheet. */
    public static final int ROWS = 1_048_576;

    /** Characters of a cell. */
    public static final int TEXT = 32_767;

    /** Characters of a sheet's name. */
    public static final int NAME = 31;

    /** Digits of a number that a cell keeps. */
    public static final int DIGITS = 15;

    private SheetLimits() {}
}
