package counterbench.sheets.report;

import counterbench.shared.Refused;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Finds the layout of a report: the workshop's own file {@code reports/NAME.yaml} in the home
 * folder where there is one, else the program's.
 */
public final class ReportLayouts {
    private final Path home;

    public ReportLayouts(Path home) {
        this.home = home;
    }

    /**
     * The layout of a report.
     *
     * @param name what the program calls it, such as {@code parts}
     * @throws Refused with every problem of the workshop's file, by line and column
     */
    public ReportLayout layout(String name) {
        ReportLayout own = programs(name);
        Path file = home.resolve("reports").resolve(name + ".yaml");
        return Files.exists(file)
                ? new LayoutReader(String.valueOf(file.getFileName()), own).read(text(file))
                : own;
    }

    /** The program's own layout of a report. */
    public static ReportLayout programs(String name) {
        String resource = "/counterbench/reports/" + name + ".yaml";
        try (InputStream in = ReportLayouts.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalArgumentException("there is no report " + name);
            }
            String yaml = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return new LayoutReader(name + ".yaml", null).read(yaml);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (CharacterCodingException e) {
            throw new Refused(file.toString(), "is not written in UTF-8", "save it in UTF-8");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
