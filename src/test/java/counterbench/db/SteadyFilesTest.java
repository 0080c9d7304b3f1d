package counterbench.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.h2.store.fs.FilePath;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SteadyFilesTest {
    private static final int SIZE = 100_000;
    private static final int READINGS = 2_000;

    @TempDir Path folder;

    @BeforeEach
    void register() {
        SteadyFiles.register();
    }

    /** What a test leaves of its interrupts must not reach the next. */
    @AfterEach
    void clear() {
        Thread.interrupted();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void what_is_written_anywhere_is_read_anywhere(boolean direct) throws IOException {
        Random random = new Random(71);
        byte[] all = new byte[SIZE];
        random.nextBytes(all);
        try (FileChannel file = open("rw")) {
            for (int at = 0; at < SIZE; at += 10_000) {
                file.write(ByteBuffer.wrap(all, at, 10_000), at);
            }
            for (int i = 0; i < READINGS; i++) {
                int at = random.nextInt(SIZE);
                ByteBuffer into = buffer(direct, 1 + random.nextInt(20_000));
                into.position(into.limit() / 3);
                int wanted = Math.min(into.remaining(), SIZE - at);
                assertThat(file.read(into, at)).isEqualTo(wanted);
                into.flip().position(into.limit() - wanted);
                byte[] read = new byte[wanted];
                into.get(read);
                assertThat(read).isEqualTo(Arrays.copyOfRange(all, at, at + wanted));
            }
            assertThat(file.read(buffer(direct, 8), SIZE)).as("behind the end").isEqualTo(-1);
            file.truncate(SIZE / 2);
            assertThat(file.size()).isEqualTo(SIZE / 2);
            assertThat(file.read(buffer(direct, 8), SIZE / 2)).isEqualTo(-1);
        }
        assertThat(folder.resolve("file")).hasSize(SIZE / 2);
    }

    private static ByteBuffer buffer(boolean direct, int size) {
        return direct ? ByteBuffer.allocateDirect(size) : ByteBuffer.allocate(size);
    }

    @Test
    void an_interrupt_closes_nothing_and_is_not_lost() throws IOException {
        Files.writeString(folder.resolve("file"), "as it was");
        try (FileChannel file = open("rw")) {
            Thread.currentThread().interrupt();
            ByteBuffer into = ByteBuffer.allocate(9);
            assertThat(file.read(into, 0)).isEqualTo(9);
            assertThat(new String(into.array(), StandardCharsets.UTF_8)).isEqualTo("as it was");
            assertThat(Thread.interrupted()).isTrue();
            assertThat(file.isOpen()).isTrue();
        }
    }

    @Test
    void what_is_closed_can_be_deleted_and_made_anew() throws IOException {
        open("rw").close();
        FilePath file = FilePath.get(name());
        file.delete();
        assertThat(file.exists()).isFalse();
        try (FileChannel again = open("rw")) {
            again.write(ByteBuffer.wrap(new byte[] {7}));
            again.position(0);
            ByteBuffer into = ByteBuffer.allocate(1);
            again.read(into);
            assertThat(into.array()).containsExactly(7);
        }
    }

    /** As Java's FileChannel says of locks: on some systems they are mandatory. */
    @Test
    void where_a_lock_keeps_out_all_other_handles_the_one_that_holds_it_reads() throws IOException {
        String file = folder.resolve("file").toString();
        try (FileChannel channel = FilePath.get("async:" + file).open("rw")) {
            assertThat(SteadyFiles.reading(file, channel, true)).isSameAs(channel);
            try (FileChannel other = SteadyFiles.reading(file, channel, false)) {
                assertThat(other).isInstanceOf(SteadyFile.class);
            }
        }
    }

    private FileChannel open(String mode) throws IOException {
        return FilePath.get(name()).open(mode);
    }

    private String name() {
        return SteadyFiles.SCHEME + ":" + folder.resolve("file");
    }
}
