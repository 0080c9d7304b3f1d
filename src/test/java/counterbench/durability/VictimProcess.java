package counterbench.durability;

import counterbench.db.StoreAddress;
import counterbench.db.TestStores;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A victim seen from outside: started, let go, listened to, killed. */
final class VictimProcess implements AutoCloseable {
    private final Process process;
    private final BufferedReader out;

    /** What it says on its error output. */
    private final Path errors;

    private VictimProcess(Process process, Path errors) {
        this.process = process;
        this.errors = errors;
        this.out =
                new BufferedReader(
                        new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /** Starts one, which does nothing before it is let go. */
    static VictimProcess start(StoreAddress address, String... paper) throws IOException {
        return start(Victim.class, address, paper);
    }

    /** Starts a clerk, who does nothing before being let go. */
    static VictimProcess clerk(StoreAddress address, long seed, int acts) throws IOException {
        return start(Clerk.class, address, String.valueOf(seed), String.valueOf(acts));
    }

    /** Starts a bench, which does nothing before it is let go. */
    static VictimProcess bench(StoreAddress address, String job) throws IOException {
        return start(BenchVictim.class, address, job);
    }

    /** Types lines, all at once as a scanner's batch file comes. */
    void type(List<String> lines) throws IOException {
        String text = String.join("\n", lines) + "\n";
        process.getOutputStream().write(text.getBytes(StandardCharsets.UTF_8));
        process.getOutputStream().close();
    }

    private static VictimProcess start(Class<?> main, StoreAddress address, String... more)
            throws IOException {
        List<String> line =
                new ArrayList<>(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-XX:TieredStopAtLevel=1",
                                "-XX:+UseSerialGC",
                                "-Xmx256m",
                                "-cp",
                                System.getProperty("java.class.path"),
                                main.getName(),
                                address.file().isPresent()
                                        ? TestStores.folder(address).toString()
                                        : "unused",
                                address.file().isPresent() ? "" : address.url()));
        line.addAll(Arrays.asList(more));
        Path errors = Files.createTempFile("victim", ".err");
        errors.toFile().deleteOnExit();
        return new VictimProcess(
                new ProcessBuilder(line).redirectError(errors.toFile()).start(), errors);
    }

    VictimProcess go() throws IOException {
        process.getOutputStream().write('\n');
        process.getOutputStream().flush();
        return this;
    }

    /** What it says next; null after its end. */
    @Nullable String next() throws IOException {
        return out.readLine();
    }

    /** All that it says before it says that it is done. */
    List<String> untilDone() throws IOException {
        List<String> said = new ArrayList<>();
        for (String line = next(); !"done".equals(line); line = next()) {
            if (line == null) {
                throw new AssertionError(
                        "ended after %d lines: %s"
                                .formatted(said.size(), Files.readString(errors)));
            }
            said.add(line);
        }
        return said;
    }

    /** Kills it as {@code kill -9} does, and gives all that it had said until then. */
    List<String> kill() throws IOException, InterruptedException {
        // The process's own way of killing it would close its output before we have read it.
        process.toHandle().destroyForcibly();
        List<String> rest = new ArrayList<>();
        for (String line; (line = next()) != null; ) {
            rest.add(line);
        }
        process.waitFor();
        return rest;
    }

    boolean isAlive() {
        return process.isAlive();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
