package counterbench.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The real program in a process of its own: exit codes, pipes, clean streams. */
class ProcessTest {
    @TempDir Path folder;

    private record Ended(int code, String out, String err) {}

    private Ended run(String input, String... words) throws Exception {
        Path err = folder.resolve("err");
        Process process = start(err, words);
        try (OutputStream in = process.getOutputStream()) {
            in.write(input.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            // A process that reads nothing may be gone already.
        }
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ended(process.waitFor(), out, Files.readString(err));
    }

    private Process start(Path err, String... words) throws IOException {
        return builder(err, words).start();
    }

    private ProcessBuilder builder(Path err, String... words) {
        List<String> line =
                new ArrayList<>(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-XX:TieredStopAtLevel=1",
                                "-cp",
                                System.getProperty("java.class.path"),
                                "counterbench.Counterbench"));
        line.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(line).redirectError(err.toFile());
        builder.environment().keySet().removeIf(name -> name.startsWith("COUNTERBENCH"));
        builder.environment().put("COUNTERBENCH_HOME", folder.resolve("home").toString());
        return builder;
    }

    @Test
    void one_command_ends_with_its_code_and_says_nothing_else() throws Exception {
        Ended ended = run("", "version");
        assertThat(ended.code()).isZero();
        assertThat(ended.out()).matches("counterbench .*, Java [0-9]+\\R");
        assertThat(ended.err()).isEmpty();
        assertThat(folder.resolve("home")).as("version needs no home").doesNotExist();
    }

    @Test
    void a_wrong_command_line_ends_with_2_and_nothing_on_standard_output() throws Exception {
        Ended ended = run("", "verison");
        assertThat(ended.code()).isEqualTo(2);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err())
                .startsWith("there is no command \"verison\"; did you mean version?");
    }

    @Test
    void words_of_libraries_are_words_of_ours_or_refused() throws Exception {
        assertThat(run("", "version", "--logging.level.root=debug").code()).isEqualTo(2);
        assertThat(run("", "--spring.main.banner-mode=console").code()).isEqualTo(2);
    }

    @Test
    void a_pipe_is_a_script() throws Exception {
        Ended ended = run("# first\nversion\n\nhelp 'version'\nnonsense\nversion\n");
        assertThat(ended.code()).isEqualTo(2);
        assertThat(ended.out().lines().filter(l -> l.startsWith("counterbench "))).hasSize(1);
        assertThat(ended.err()).contains("standard input, line 5: stopped here");
    }

    @Test
    void a_file_is_a_script_too() throws Exception {
        Path script = Files.writeString(folder.resolve("morning.txt"), "version\nexit\nnonsense\n");
        assertThat(run("", "@" + script).code()).isZero();
        Path none = folder.resolve("none");
        Ended missing = run("", "@" + none);
        assertThat(missing.code()).isEqualTo(2);
        assertThat(missing.err())
                .isEqualToNormalizingNewlines(
                        "script \""
                                + none
                                + "\": there is no such file; say its path from "
                                + Path.of("").toAbsolutePath()
                                + "\n");
        assertThat(run("", "@" + folder).err()).contains("it is a folder; name the file in it");
    }

    /** A shell without job control starts its background jobs with SIGINT ignored. */
    @Test
    @Timeout(60)
    void an_interrupted_process_ends_with_5() throws Exception {
        Process process = start(folder.resolve("err"));
        process.getOutputStream().write("version\n".getBytes(StandardCharsets.UTF_8));
        process.getOutputStream().flush();
        assertThat(process.inputReader().readLine()).startsWith("counterbench");
        assumeThat(ignoresInterrupts(process)).isFalse();
        new ProcessBuilder("kill", "-INT", String.valueOf(process.pid())).start().waitFor();
        assertThat(process.waitFor()).isEqualTo(5);
    }

    private static boolean ignoresInterrupts(Process process) throws IOException {
        Path status = Path.of("/proc", String.valueOf(process.pid()), "status");
        assumeThat(status).exists();
        long ignored =
                Files.readAllLines(status).stream()
                        .filter(line -> line.startsWith("SigIgn:"))
                        .mapToLong(line -> Long.parseUnsignedLong(line.substring(7).strip(), 16))
                        .findFirst()
                        .orElse(0);
        return (ignored & 2) != 0;
    }

    @Test
    void a_reader_who_has_seen_enough_gets_no_message() throws Exception {
        Process process = start(folder.resolve("err"), "help");
        process.getInputStream().close();
        assertThat(process.waitFor()).isEqualTo(5);
        assertThat(folder.resolve("err")).isEmptyFile();
    }

    @Test
    void results_that_find_no_room_are_a_failure() throws Exception {
        assumeThat(Path.of("/dev/full")).exists();
        ProcessBuilder builder = builder(folder.resolve("err"), "help");
        Process process = builder.redirectOutput(new File("/dev/full")).start();
        assertThat(process.waitFor()).isEqualTo(4);
        assertThat(folder.resolve("err")).content().startsWith("the results could not be written");
    }
}
