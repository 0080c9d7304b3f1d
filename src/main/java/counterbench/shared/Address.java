package counterbench.shared;

/**
 * Where a fact stands in its site's journal.
 *
 * @param entry the number of the entry, from 1
 * @param line the line within the entry, from 1
 */
public record Address(long entry, int line) implements Comparable<Address> {
    @Override
    public int compareTo(Address other) {
        int byEntry = Long.compare(entry, other.entry);
        return byEntry != 0 ? byEntry : Integer.compare(line, other.line);
    }

    /** Written as people type it: {@code 12.3}. */
    @Override
    public String toString() {
        return entry + "." + line;
    }
}
