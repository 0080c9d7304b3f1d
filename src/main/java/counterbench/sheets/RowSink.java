package counterbench.sheets;

/** Takes the rows of one sheet while it is being read, in their order. */
public interface RowSink {
    /** The first row that says anything. Called once, before any other row. */
    void headings(SheetRow row);

    /** A row below the headings; blank ones come, too. */
    void row(SheetRow row);
}
