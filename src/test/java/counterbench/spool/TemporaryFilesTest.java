package counterbench.spool;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;

class TemporaryFilesTest {
    @Test
    void only_their_owner_can_read_them() throws IOException {
        Path file = TemporaryFiles.create(".rows");
        try {
            var view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
            assertThat(file).isEmptyFile();
            assertThat(view == null || isPrivate(view)).isTrue();
        } finally {
            TemporaryFiles.remove(file);
        }
        assertThat(file).doesNotExist();
        TemporaryFiles.remove(file);
    }

    private static boolean isPrivate(PosixFileAttributeView view) throws IOException {
        return PosixFilePermissions.toString(view.readAttributes().permissions())
                .equals("rw-------");
    }

    @Test
    void who_has_no_room_for_them_is_told_where_to_make_some() {
        assertThat(TemporaryFiles.unusable(new IOException("No space left on device")))
                .hasMessage(
                        "the folder for temporary files, "
                                + System.getProperty("java.io.tmpdir")
                                + ", cannot be used (No space left on device); make room there, or"
                                + " name another one: JAVA_TOOL_OPTIONS=-Djava.io.tmpdir=FOLDER");
    }
}
