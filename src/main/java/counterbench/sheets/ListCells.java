package counterbench.sheets;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Cells that hold several things. They travel sorted, so that their order does not count. */
final class ListCells {
    private static final List<String> ROLES = List.of("parts", "technician", "warranty", "lead");
    private static final Pattern QUANTITY = Pattern.compile("[0-9]{1,12}(\\.[0-9]{1,3})?");
    private static final String PARTS_EXAMPLE = "write it as QM-4473:1; QM-4476:2";

    private ListCells() {}

    /** Parts and quantities: {@code QM-4473:1; QM-4476:2}, sorted by part. */
    static @Nullable String parts(String text, Complaint complaint) {
        Map<String, BigDecimal> parts = new TreeMap<>();
        for (String item : text.split(";", -1)) {
            int colon = item.lastIndexOf(':');
            String part = Text.trimmed(item.substring(0, Math.max(0, colon)));
            String quantity = Text.trimmed(item.substring(colon + 1));
            if (part.isEmpty() || !QUANTITY.matcher(quantity).matches()) {
                complaint.wrong("is not a list of parts and quantities", PARTS_EXAMPLE);
                return null;
            }
            if (parts.put(part, new BigDecimal(quantity)) != null) {
                complaint.wrong("names " + part + " twice", "say the sum once");
                return null;
            }
        }
        if (parts.values().stream().anyMatch(q -> q.signum() == 0)) {
            complaint.wrong("has a quantity of zero", "leave out what is not missing");
            return null;
        }
        return parts.entrySet().stream()
                .map(p -> p.getKey() + ":" + plain(p.getValue()))
                .collect(Collectors.joining("; "));
    }

    private static String plain(BigDecimal quantity) {
        return quantity.stripTrailingZeros().toPlainString();
    }

    /** Roles: {@code parts, lead}, sorted. */
    static @Nullable String roles(String text, Complaint complaint) {
        TreeSet<String> roles = new TreeSet<>();
        for (String item : text.split("[,;]", -1)) {
            String role = Text.trimmed(item).toLowerCase(Locale.ROOT);
            if (!ROLES.contains(role)) {
                complaint.wrong(
                        Text.quoted(role) + " is no role", "roles are " + String.join(", ", ROLES));
                return null;
            }
            roles.add(role);
        }
        return String.join(", ", roles);
    }

    /** An answer to an attribute; complained of where it would break the list. */
    static String answer(String text, Complaint complaint) {
        if (text.indexOf(';') >= 0 || text.indexOf('=') >= 0) {
            complaint.wrong("has a ; or =", "answers are words, such as manual");
        }
        return text;
    }
}
