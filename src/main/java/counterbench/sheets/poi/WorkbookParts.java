package counterbench.sheets.poi;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** Reads the list of sheets and from which day a workbook counts. */
final class WorkbookParts extends DefaultHandler {
    private final List<Entry> sheets = new ArrayList<>();
    private boolean from1904;

    /** A sheet's name, and the id by which the package knows it. */
    record Entry(String name, String id) {}

    /**
     * What a workbook says of itself.
     *
     * @param from1904 whether its days count from 1904-01-01 and not from 1900
     */
    record Contents(List<Entry> sheets, boolean from1904) {
        Contents {
            sheets = List.copyOf(sheets);
        }

        String idOf(String name) {
            return sheets.stream()
                    .filter(s -> s.name().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no sheet " + name))
                    .id();
        }
    }

    Contents contents() {
        return new Contents(sheets, from1904);
    }

    @Override
    public void startElement(String uri, String name, String prefixed, Attributes said) {
        if (name.equals("workbookPr")) {
            String date1904 = said.getValue("date1904");
            from1904 = "1".equals(date1904) || "true".equals(date1904);
        } else if (name.equals("sheet")) {
            String id = relation(said);
            if (id != null) {
                sheets.add(new Entry(String.valueOf(said.getValue("name")), id));
            }
        }
    }

    private static @Nullable String relation(Attributes said) {
        for (int i = 0; i < said.getLength(); i++) {
            if (said.getLocalName(i).equals("id") && said.getURI(i).contains("relationships")) {
                return said.getValue(i);
            }
        }
        return null;
    }
}
