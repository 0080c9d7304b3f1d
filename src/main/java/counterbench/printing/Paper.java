package counterbench.printing;

/** The sizes of paper, each with the usual sheet of labels for it (common practice, no source). */
public enum Paper {
    /** 8.5 by 11 inches; labels of 2 5/8 by 1 inch. */
    LETTER(10),
    /** 210 by 297 millimetres; labels of 70 by 36 millimetres. */
    A4(8);

    /** Labels side by side. */
    public static final int LABELS_ACROSS = 3;

    private final int labelsDown;

    Paper(int labelsDown) {
        this.labelsDown = labelsDown;
    }

    /** Labels on a sheet. */
    public int labels() {
        return labelsDown * LABELS_ACROSS;
    }
}
