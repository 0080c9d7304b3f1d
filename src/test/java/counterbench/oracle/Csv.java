package counterbench.oracle;

import java.util.ArrayList;
import java.util.List;

/** The plain part of RFC 4180: comma, quotes doubled inside quotes, CRLF or LF. */
final class Csv {

    private Csv() {}

    static List<List<String>> parse(String text) {
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quoted) {
                if (c != '"') {
                    cell.append(c);
                } else if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    cell.append('"');
                    i++;
                } else {
                    quoted = false;
                }
            } else if (c == '"') {
                quoted = true;
            } else if (c == ',') {
                row.add(take(cell));
            } else if (c == '\n') {
                row.add(take(cell));
                rows.add(row);
                row = new ArrayList<>();
            } else if (c != '\r') {
                cell.append(c);
            }
        }
        if (cell.length() > 0 || !row.isEmpty()) {
            row.add(take(cell));
            rows.add(row);
        }
        return rows;
    }

    static String line(List<String> cells) {
        return String.join(",", cells.stream().map(Csv::quote).toList()) + "\r\n";
    }

    private static String quote(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    private static String take(StringBuilder cell) {
        String text = cell.toString();
        cell.setLength(0);
        return text;
    }
}
