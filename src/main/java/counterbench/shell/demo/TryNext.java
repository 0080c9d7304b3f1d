package counterbench.shell.demo;

import java.nio.file.Path;

/**
 * How a command is typed so that it works on the demo's home.
 *
 * @param home the demo's home
 * @param server whether the environment names a server, which the command must not reach
 */
record TryNext(Path home, boolean server) {
    private static final String USUAL_JAR = "target/counterbench.jar";

    /** The whole line for a command of the program; for the shell where the command is empty. */
    String line(String command) {
        String line =
                (server ? "COUNTERBENCH_STORE= " : "")
                        + "COUNTERBENCH_HOME="
                        + quoted(home.toString())
                        + " java -jar "
                        + quoted(jar());
        return command.isEmpty() ? line : line + " " + command;
    }

    private static String jar() {
        String path = System.getProperty("java.class.path", "");
        return path.endsWith(".jar") && !path.contains(java.io.File.pathSeparator)
                ? path
                : USUAL_JAR;
    }

    private static String quoted(String word) {
        return word.matches("[A-Za-z0-9_./:@%+=-]+")
                ? word
                : "'" + word.replace("'", "'\\''") + "'";
    }
}
