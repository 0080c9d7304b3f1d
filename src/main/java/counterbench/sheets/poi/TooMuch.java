package counterbench.sheets.poi;

/** Thrown where a part of a workbook goes beyond what a workbook may hold. */
final class TooMuch extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String todo;

    TooMuch(String because, String todo) {
        super(because);
        this.todo = todo;
    }

    String because() {
        return String.valueOf(getMessage());
    }

    String todo() {
        return todo;
    }
}
