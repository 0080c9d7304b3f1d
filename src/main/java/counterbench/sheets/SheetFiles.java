package counterbench.sheets;

import counterbench.facts.FactKind;
import counterbench.shared.Refused;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Finds sheets in files and folders and reads them, in every format that it was given. */
public final class SheetFiles {
    private final List<SheetFormat> formats;

    public SheetFiles(List<SheetFormat> formats) {
        this.formats = List.copyOf(formats);
    }

    /**
     * The sheets of a file, or of all files of a folder by name. In a folder, files that are no
     * sheets by their ending, hidden files, lock files of office programs and folders are passed
     * over.
     */
    public List<Sheet> find(Path fileOrFolder) {
        if (Files.isDirectory(fileOrFolder)) {
            return inFolder(fileOrFolder);
        }
        if (!Files.isReadable(fileOrFolder)) {
            throw refused(fileOrFolder, "there is no such file, or it may not be read", "");
        }
        return format(fileOrFolder).sheets(fileOrFolder);
    }

    private List<Sheet> inFolder(Path folder) {
        List<Sheet> sheets = new ArrayList<>();
        for (Path file : files(folder)) {
            sheets.addAll(format(file).sheets(file));
        }
        if (sheets.isEmpty()) {
            throw refused(folder, "the folder holds no sheet", "sheets end in " + endings(" or "));
        }
        return List.copyOf(sheets);
    }

    private List<Path> files(Path folder) {
        return seen(folder).stream().filter(this::isSheet).toList();
    }

    /** What of a folder is passed over, by name, hidden files and lock files apart. */
    public List<String> passedOver(Path fileOrFolder) {
        return Files.isDirectory(fileOrFolder)
                ? seen(fileOrFolder).stream()
                        .filter(f -> !isSheet(f))
                        .map(f -> String.valueOf(f.getFileName()))
                        .toList()
                : List.of();
    }

    private boolean isSheet(Path file) {
        return find(formats, file).isPresent() && Files.isRegularFile(file);
    }

    private static List<Path> seen(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> !isHidden(f)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isHidden(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.startsWith(".") || name.startsWith("~$");
    }

    /**
     * Reads a sheet's rows, without keeping any. Rows that say nothing are passed over.
     *
     * @param attributes the attributes that a list of vehicles may have as headings
     * @param zoneOf the time zone of the site that a row names; it is given null where the row
     *     names none
     * @throws Refused if the file is unusable or its headings are
     */
    public void read(
            Sheet sheet,
            Set<String> attributes,
            Function<@Nullable String, ZoneId> zoneOf,
            Consumer<ParsedRow> rows) {
        read(sheet, new FactRows(sheet, attributes, zoneOf, rows));
    }

    /** About how many rows sheets have together; 0 where that cannot be told of one of them. */
    public long aboutRows(Collection<Sheet> sheets) {
        List<Long> each = sheets.stream().map(s -> format(s.file()).aboutRows(s)).toList();
        return each.contains(RowEstimate.UNKNOWN)
                ? RowEstimate.UNKNOWN
                : each.stream().mapToLong(Long::longValue).sum();
    }

    /** Reads a sheet's rows as the file holds them, without keeping any. */
    public void read(Sheet sheet, RowSink rows) {
        format(sheet.file()).read(sheet, rows);
    }

    /** The format that a file has by its ending. */
    SheetFormat format(Path file) {
        return find(formats, file)
                .orElseThrow(
                        () ->
                                refused(
                                        file,
                                        "is neither " + endings(" nor "),
                                        "save the sheet as one of these"));
    }

    private static Optional<SheetFormat> find(List<SheetFormat> formats, Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return formats.stream().filter(f -> name.endsWith(f.ending())).findFirst();
    }

    private String endings(String between) {
        return formats.stream().map(SheetFormat::ending).collect(Collectors.joining(between));
    }

    /** The kind that a sheet's name says, or a refusal that names all kinds. */
    public static FactKind kind(Path file, String what, String word) {
        return FactKind.of(word)
                .filter(FactKind::isInSheets)
                .orElseThrow(
                        () ->
                                refused(
                                        file,
                                        what + " " + Text.quoted(word) + " is no kind of sheet",
                                        "call it one of: " + words(FactKind::word)));
    }

    private static String words(Function<FactKind, String> word) {
        return Arrays.stream(FactKind.values())
                .filter(FactKind::isInSheets)
                .map(word)
                .collect(Collectors.joining(", "));
    }

    /** A refusal of a whole file. */
    public static Refused refused(Path file, String because, String todo) {
        return new Refused(String.valueOf(file.getFileName()), because, todo);
    }
}
