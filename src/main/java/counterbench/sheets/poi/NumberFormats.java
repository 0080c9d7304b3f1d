package counterbench.sheets.poi;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** Reads how each style of a workbook shows numbers. */
final class NumberFormats extends DefaultHandler {
    private static final int MOST_STYLES = 70_000;

    private final Map<Integer, String> own = new HashMap<>();
    private final List<Shows> styles = new ArrayList<>();
    private boolean inStyles;

    /** How a number is shown. */
    enum Shows {
        /** As it is. */
        PLAIN,
        /** With other digits than it has. */
        SHAPED,
        /** As a day. */
        DAY,
        /** As a day with its time. */
        DAY_AND_TIME
    }

    /** How a style shows numbers. */
    Shows of(int style) {
        return style >= 0 && style < styles.size() ? styles.get(style) : Shows.PLAIN;
    }

    @Override
    public void startElement(String uri, String name, String prefixed, Attributes said) {
        switch (name) {
            case "numFmt" ->
                    own.put(number(said, "numFmtId"), String.valueOf(said.getValue("formatCode")));
            case "cellXfs" -> inStyles = true;
            case "xf" -> addStyle(said);
            default -> {}
        }
    }

    @Override
    public void endElement(String uri, String name, String prefixed) {
        inStyles &= !name.equals("cellXfs");
    }

    private void addStyle(Attributes said) {
        if (inStyles && styles.size() < MOST_STYLES) {
            int id = number(said, "numFmtId");
            String builtIn = id < 0 ? null : BuiltinFormats.getBuiltinFormat(id);
            styles.add(shows(id, own.getOrDefault(id, builtIn == null ? "General" : builtIn)));
        }
    }

    private static int number(Attributes said, String name) {
        @Nullable String text = said.getValue(name);
        try {
            return text == null ? 0 : Integer.parseInt(text.strip());
        } catch (NumberFormatException e) {
            return 0;
        }
    }

    private static Shows shows(int id, String format) {
        if (DateUtil.isADateFormat(id, format)) {
            return hasTime(format) ? Shows.DAY_AND_TIME : Shows.DAY;
        }
        boolean plain = List.of("general", "0", "@").contains(format.toLowerCase(Locale.ROOT));
        return plain ? Shows.PLAIN : Shows.SHAPED;
    }

    /** Hours or seconds, outside quoted text and colours. */
    private static boolean hasTime(String format) {
        String shown = format.replaceAll("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.", "");
        return shown.matches("(?s).*[hHsS].*") || format.matches("(?is).*\\[(h+|m+|s+)\\].*");
    }
}
