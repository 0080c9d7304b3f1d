package counterbench.home;

import java.nio.file.FileSystems;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** Permissions for folders and files that hold the workshop's facts: nobody else may look. */
public final class OwnerOnly {
    private OwnerOnly() {}

    /** For a folder that is made. */
    public static FileAttribute<?>[] folder() {
        return only("rwx------");
    }

    /** For a file that is made. */
    public static FileAttribute<?>[] file() {
        return only("rw-------");
    }

    /** Systems without such permissions have their own; there the folder's hold. */
    private static FileAttribute<?>[] only(String permissions) {
        boolean posix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
        return posix
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(
                            PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }
}
