package counterbench.printing;

import java.nio.file.Path;

/**
 * Draws what goes to a printer into files, over older ones of those names. A file is complete or
 * not there. Text that cannot be drawn as it is shows what is missing.
 */
public interface Printer {
    /** Draws sheets of labels. */
    void print(LabelSheet sheet, Path file);

    /** Draws a document. */
    void print(Document document, Path file);
}
