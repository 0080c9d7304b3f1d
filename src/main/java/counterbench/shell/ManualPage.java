package counterbench.shell;

import counterbench.shell.print.Paragraph;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Writes a command's manual as the page that {@code help} shows. */
public final class ManualPage {
    private static final int INDENT = 2;
    private static final int WIDTH = 80;

    /** What is said of a word is not broken into lines that are shorter. */
    private static final int NARROWEST = 24;

    private ManualPage() {}

    /** The page, without a line end at its end. */
    public static String of(Manual manual) {
        List<String> lines = new ArrayList<>();
        lines.add(manual.name() + ": " + manual.purpose());
        lines.add("");
        lines.addAll(Paragraph.lines("  " + synopsis(manual), WIDTH));
        lines.add("");
        lines.addAll(columns(parameters(manual)));
        addExamples(manual, lines);
        for (String note : manual.notes()) {
            lines.add("");
            note.lines().forEach(line -> lines.addAll(Paragraph.lines(line, WIDTH)));
        }
        return String.join("\n", lines);
    }

    /** The command with all that it takes, in one line. */
    public static String synopsis(Manual manual) {
        StringBuilder line = new StringBuilder(manual.name());
        manual.arguments().forEach(argument -> line.append(' ').append(bracketed(argument)));
        manual.options().forEach(option -> line.append(' ').append(bracketed(option)));
        return line.toString();
    }

    private static String bracketed(Parameter<?> parameter) {
        String form = parameter.required() ? parameter.form() : "[" + parameter.form() + "]";
        return parameter.repeatable() ? form + "..." : form;
    }

    private static List<List<String>> parameters(Manual manual) {
        List<List<String>> rows = new ArrayList<>();
        manual.arguments().forEach(a -> rows.add(List.of(a.form(), purpose(a))));
        manual.options().forEach(o -> rows.add(List.of(o.form(), purpose(o))));
        rows.add(List.of("--help", "shows this page"));
        return rows;
    }

    private static String purpose(Parameter<?> parameter) {
        String purpose = parameter.purpose();
        boolean must = parameter instanceof Option<?> && parameter.required();
        return (must ? purpose + " (required)" : purpose)
                + (parameter.repeatable() ? " (may be said again)" : "");
    }

    private static void addExamples(Manual manual, List<String> lines) {
        if (!manual.examples().isEmpty()) {
            lines.add("");
            lines.add("For example");
            manual.examples().forEach(example -> lines.add("  " + example));
        }
    }

    /** Pairs of a word and what it means, one under the other. */
    public static List<String> columns(List<List<String>> pairs) {
        int width = pairs.stream().mapToInt(p -> p.get(0).length()).max().orElse(0);
        String form = "%" + INDENT + "s%-" + Math.max(1, width) + "s  %s";
        List<String> lines = new ArrayList<>();
        for (List<String> pair : pairs) {
            String word = pair.get(0);
            int left = WIDTH - INDENT - width - INDENT;
            for (String meaning :
                    left < NARROWEST ? List.of(pair.get(1)) : Paragraph.lines(pair.get(1), left)) {
                lines.add(String.format(Locale.ROOT, form, "", word, meaning).stripTrailing());
                word = "";
            }
        }
        return lines;
    }
}
