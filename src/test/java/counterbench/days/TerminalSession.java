package counterbench.days;

import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jline.builtins.ScreenTerminal;

/**
 * The program on a pseudo-terminal, which {@code script} (util-linux) makes, and the screen as a
 * person sees it: escape sequences are carried out by a terminal of the library for terminals.
 */
final class TerminalSession implements AutoCloseable {
    private static final int COLUMNS = 110;
    private static final int LINES = 2000;

    private final String folder;
    private final Path clock;
    private final Process process;
    private final OutputStream keys;
    private final ScreenTerminal screen = new ScreenTerminal(COLUMNS, LINES);
    private final Thread pump = new Thread(this::pump, "screen");

    /** Opens the shell with a home folder, in a working folder. */
    TerminalSession(Path folder, Path home, String time) throws IOException {
        this.folder = folder.toString();
        this.clock = folder.resolve("clock");
        setClock(time);
        this.process = start(folder, home);
        this.keys = process.getOutputStream();
        pump.setDaemon(true);
        pump.start();
    }

    private Process start(Path folder, Path home) throws IOException {
        String program =
                String.join(
                        " ",
                        "stty cols " + COLUMNS + " rows " + LINES + ";",
                        // A build in the background has Ctrl-C ignored; people's terminals do not.
                        "exec env --default-signal=INT",
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1 -Duser.language=en counterbench.DayProgram",
                        clock.toString());
        ProcessBuilder builder =
                new ProcessBuilder("script", "-qec", program, "/dev/null")
                        .directory(folder.toFile())
                        .redirectErrorStream(true);
        var environment = builder.environment();
        environment.keySet().removeIf(name -> name.startsWith("COUNTERBENCH"));
        environment.put("COUNTERBENCH_HOME", home.toString());
        environment.put("CLASSPATH", absoluteClassPath());
        environment.put("TERM", "xterm");
        environment.put("LC_ALL", "C.UTF-8");
        return builder.start();
    }

    private static String absoluteClassPath() {
        List<String> absolute = new ArrayList<>();
        for (String one : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
            absolute.add(Path.of(one).toAbsolutePath().toString());
        }
        return String.join(File.pathSeparator, absolute);
    }

    private void pump() {
        char[] some = new char[4096];
        try (Reader out = new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8)) {
            for (int read = out.read(some); read >= 0; read = out.read(some)) {
                screen.write(new String(some, 0, read));
                answer(screen.read());
            }
        } catch (IOException e) {
            // The terminal is gone with its program.
        }
    }

    /** What the program asks of a terminal, such as where its cursor is, it is told. */
    private void answer(String reply) throws IOException {
        if (!reply.isEmpty()) {
            press(reply);
        }
    }

    /** Sets the time. */
    void setClock(String time) throws IOException {
        Files.writeString(clock, time);
    }

    /** Presses keys. */
    void press(String pressed) throws IOException {
        synchronized (keys) {
            keys.write(pressed.getBytes(StandardCharsets.UTF_8));
            keys.flush();
        }
    }

    /** The screen's lines down to the last that is not empty, with one name for its folder. */
    List<String> lines() {
        return screen.toString()
                .stripTrailing()
                .lines()
                .map(line -> line.stripTrailing().replace(folder, "FOLDER"))
                .toList();
    }

    boolean isOver() {
        return !process.isAlive() && !pump.isAlive();
    }

    @Override
    public void close() {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
    }
}
