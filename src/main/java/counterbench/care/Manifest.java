package counterbench.care;

import counterbench.journal.Sha256;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a backup says of itself: every table with its rows and the SHA-256 of its file. Its own last
 * line is the SHA-256 of all lines before.
 *
 * @param version the version of the store's tables
 * @param writtenAt when it was written
 * @param tables the tables
 * @param sequences the sequences
 */
public record Manifest(
        String version, Instant writtenAt, List<Table> tables, List<Sequence> sequences) {
    private static final String FORMAT = "counterbench-backup 1";

    public Manifest {
        tables = List.copyOf(tables);
        sequences = List.copyOf(sequences);
    }

    /** A table's file. */
    public record Table(String name, long rows, String sha256) {}

    /** A sequence, and the number that it gives next at the earliest. */
    public record Sequence(String name, long next) {}

    /** All rows of all tables. */
    public long rows() {
        return tables.stream().mapToLong(Table::rows).sum();
    }

    /** As it is written into the backup. */
    public String text() {
        StringBuilder text = new StringBuilder(FORMAT).append('\n');
        text.append("version ").append(version).append('\n');
        text.append("written ").append(writtenAt).append('\n');
        sequences.forEach(s -> text.append("sequence " + s.name() + " " + s.next()).append('\n'));
        tables.forEach(
                t ->
                        text.append("table " + t.name() + " " + t.rows() + " " + t.sha256())
                                .append('\n'));
        return text + "end " + Sha256.hex(text.toString()) + "\n";
    }

    /** The manifest that a text is; empty if it is none, or was changed. */
    public static Optional<Manifest> of(String text) {
        int end = text.lastIndexOf("end ");
        boolean whole =
                text.startsWith(FORMAT + "\n")
                        && end > 0
                        && text.substring(end)
                                .equals("end " + Sha256.hex(text.substring(0, end)) + "\n");
        try {
            return whole ? Optional.of(parsed(text.substring(0, end))) : Optional.empty();
        } catch (NumberFormatException | DateTimeException | IndexOutOfBoundsException e) {
            return Optional.empty();
        }
    }

    private static Manifest parsed(String text) {
        String version = "";
        Instant writtenAt = Instant.EPOCH;
        List<Table> tables = new ArrayList<>();
        List<Sequence> sequences = new ArrayList<>();
        for (String line : text.lines().skip(1).toList()) {
            String[] words = line.split(" ", -1);
            switch (words[0]) {
                case "version" -> version = words[1];
                case "written" -> writtenAt = Instant.parse(words[1]);
                case "sequence" -> sequences.add(new Sequence(words[1], Long.parseLong(words[2])));
                case "table" -> tables.add(new Table(words[1], Long.parseLong(words[2]), words[3]));
                default -> throw new IndexOutOfBoundsException(line);
            }
        }
        return new Manifest(version, writtenAt, tables, sequences);
    }
}
