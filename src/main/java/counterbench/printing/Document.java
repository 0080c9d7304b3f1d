package counterbench.printing;

import java.util.List;
import java.util.Objects;

/**
 * A document for the printer.
 *
 * @param title what it is, at its head
 * @param footer a line at the foot of each page, beside the page's number
 */
public record Document(String title, Paper paper, String footer, List<Block> blocks) {
    public Document {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(paper, "paper");
        Objects.requireNonNull(footer, "footer");
        blocks = List.copyOf(blocks);
    }
}
