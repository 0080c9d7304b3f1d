package counterbench.shell.demo;

import counterbench.home.Home;
import counterbench.shared.Refused;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import org.jspecify.annotations.Nullable;

/**
 * The home folder of the demo. A file inside marks it; a folder without that file is never touched,
 * since it may hold real data.
 */
final class DemoHome {
    static final String MARKER = "this-is-a-demo.txt";
    private static final String STORE_FILE = "store.mv.db";

    private final Path folder;

    private DemoHome(Path folder) {
        this.folder = folder;
    }

    /** The folder that is taken unless another is named: beside the home folder. */
    static Path beside(Path home) {
        return home.resolveSibling(home.getFileName() + "-demo");
    }

    /**
     * The folder, empty but for its mark.
     *
     * @param home the home folder of the running program, which must not lie in it
     * @throws Refused if there is something that the demo did not make, or a shell uses it
     */
    static Path emptied(Path named, Path home) throws IOException {
        DemoHome demo = new DemoHome(named.toAbsolutePath().normalize());
        if (Files.exists(demo.folder, LinkOption.NOFOLLOW_LINKS)) {
            demo.mustBeMarked();
            demo.mustNotHold(home);
            demo.mustNotBeInUse();
            demo.empty();
        }
        Path made = new Home(demo.folder).folder();
        Files.writeString(
                made.resolve(MARKER),
                """
                This folder was filled by the command demo, which empties it and fills it again.
                Nothing in it is real. Keep nothing of your own here.
                """);
        return made;
    }

    private void mustBeMarked() {
        if (!Files.isDirectory(folder)
                || !Files.isRegularFile(folder.resolve(MARKER), LinkOption.NOFOLLOW_LINKS)) {
            throw refused(
                    "it is there already, and the demo did not make it",
                    "name a new folder with --home");
        }
    }

    private void mustNotHold(Path home) throws IOException {
        Path real = Files.exists(home) ? home.toRealPath() : home;
        Path own = folder.toRealPath();
        if (real.startsWith(own) && !real.equals(own)) {
            throw refused("the home folder \"" + home + "\" lies in it", "name another folder");
        }
    }

    private void mustNotBeInUse() throws IOException {
        Path store = folder.resolve(STORE_FILE);
        if (Files.exists(store) && isLocked(store)) {
            throw refused(
                    "a shell has it open", "leave that shell, or name another folder with --home");
        }
    }

    private static boolean isLocked(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock()) {
            return lock == null;
        } catch (OverlappingFileLockException e) {
            return true;
        }
    }

    /** The mark stays: a folder that was emptied by half must still bear it. */
    private void empty() throws IOException {
        Files.walkFileTree(
                folder,
                new SimpleFileVisitor<>() {
                    @Override
                    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
                            throws IOException {
                        if (!file.equals(folder.resolve(MARKER))) {
                            Files.delete(file);
                        }
                        return FileVisitResult.CONTINUE;
                    }

                    @Override
                    public FileVisitResult postVisitDirectory(
                            Path visited, @Nullable IOException thrown) throws IOException {
                        if (thrown != null) {
                            throw thrown;
                        }
                        if (!visited.equals(folder)) {
                            Files.delete(visited);
                        }
                        return FileVisitResult.CONTINUE;
                    }
                });
    }

    private Refused refused(String because, String todo) {
        return new Refused("demo in \"" + folder + "\"", because, todo);
    }
}
