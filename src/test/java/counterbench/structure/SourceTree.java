package counterbench.structure;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The files of the project as they are written, read from the folder in which the build runs. */
public final class SourceTree {
    private static final List<String> FOLDERS =
            List.of("src", "schema", "shared", "reports", "demo-data");
    private static final Pattern TEXT = Pattern.compile(".*\\.(java|sql|yaml|csv|md|txt|xml)");

    private SourceTree() {}

    /** A file by its path from the project's folder. */
    public record Source(Path path, String text) {
        public List<String> lines() {
            return text.lines().toList();
        }

        /** The name of the class that a Java file is named after. */
        public String name() {
            return String.valueOf(path.getFileName()).replace(".java", "");
        }

        /** The places, with line numbers, at which a pattern is found. */
        public Stream<String> places(Pattern pattern) {
            List<String> lines = lines();
            return Stream.iterate(0, i -> i < lines.size(), i -> i + 1)
                    .filter(i -> pattern.matcher(lines.get(i)).find())
                    .map(i -> path + ":" + (i + 1) + ": " + lines.get(i).strip());
        }
    }

    /** Every text file of ours. */
    public static List<Source> all() {
        Stream<Path> top = Stream.of("pom.xml", "README.md", "DEVELOPERS.md").map(Path::of);
        Stream<Path> below = FOLDERS.stream().map(Path::of).flatMap(SourceTree::files);
        return Stream.concat(top, below)
                .filter(p -> TEXT.matcher(p.toString()).matches() && Files.exists(p))
                .map(SourceTree::read)
                .toList();
    }

    /** The Java files below a folder. */
    public static List<Source> java(String folder) {
        return files(Path.of(folder))
                .filter(p -> p.toString().endsWith(".java"))
                .map(SourceTree::read)
                .toList();
    }

    private static Stream<Path> files(Path folder) {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(Files::isRegularFile).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One file. */
    public static Source read(Path path) {
        try {
            return new Source(path, Files.readString(path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
