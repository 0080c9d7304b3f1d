package counterbench.care.store;

import counterbench.care.Check;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Set;
import java.util.function.Consumer;

/** Looks at the home folder from outside: who may read it, and how much room there is. */
final class CheckFolder {
    private static final long LEAST_ROOM = 1L << 30;
    private static final long KILOBYTE = 1L << 10;
    private static final long MEGABYTE = 1L << 20;

    private final Path home;
    private final Consumer<Check> checks;

    CheckFolder(Path home, Consumer<Check> checks) {
        this.home = home;
        this.checks = checks;
    }

    void run() throws IOException {
        checkOwner("home folder", home, "chmod 700");
        Path key = home.resolve("store.key");
        if (Files.exists(key)) {
            checkOwner("key of the store", key, "chmod 600");
        }
        checkRoom();
    }

    private void checkOwner(String what, Path path, String command) throws IOException {
        PosixFileAttributeView view =
                Files.getFileAttributeView(path, PosixFileAttributeView.class);
        if (view == null) {
            checks.accept(
                    Check.note(
                            what,
                            "this system does not tell who may read it",
                            "see to it that only you can"));
            return;
        }
        Set<PosixFilePermission> open = view.readAttributes().permissions();
        open.removeIf(p -> p.name().startsWith("OWNER"));
        checks.accept(
                open.isEmpty()
                        ? Check.good(what, "only its owner may read it: " + path)
                        : Check.bad(
                                what,
                                "others on this machine may use it: " + path,
                                "type " + command + " \"" + path + "\" in a terminal"));
    }

    /** What is there at all has a kilobyte at least. */
    static String words(long bytes) {
        return bytes < MEGABYTE
                ? (bytes + KILOBYTE - 1) / KILOBYTE + " KB"
                : bytes / MEGABYTE + " MB";
    }

    private void checkRoom() throws IOException {
        long room = Files.getFileStore(home).getUsableSpace();
        Path file = home.resolve("store.mv.db");
        long size = Files.exists(file) ? Files.size(file) : 0;
        String found = words(room) + " are free, the store has " + words(size);
        checks.accept(
                room >= Math.max(LEAST_ROOM, 2 * size)
                        ? Check.good("room on the disk", found)
                        : Check.bad(
                                "room on the disk",
                                found,
                                "make room: an import and a backup need as much again"));
    }
}
