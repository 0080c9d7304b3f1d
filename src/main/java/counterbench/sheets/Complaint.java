package counterbench.sheets;

/** Takes note of what is wrong with a cell, and what would be right. */
@FunctionalInterface
interface Complaint {
    void wrong(String wrong, String right);
}
