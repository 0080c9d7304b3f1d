package counterbench.sheets.poi;

import counterbench.sheets.Cell;
import java.math.BigDecimal;
import java.util.Optional;

/** Makes a cell of what a sheet's XML says of it. */
final class CellTypes {
    private final SharedTexts texts;
    private final NumberFormats formats;
    private final boolean from1904;

    CellTypes(SharedTexts texts, NumberFormats formats, boolean from1904) {
        this.texts = texts;
        this.formats = formats;
        this.from1904 = from1904;
    }

    /**
     * A cell that is not computed.
     *
     * @param type the cell's {@code t}: s, str, inlineStr, b, e, d, or n for a number
     * @param style the cell's style
     */
    Cell cell(String type, int style, TextCollector text) {
        return switch (type) {
            case "s" -> Cell.text(texts.get(Integer.parseInt(text.raw().strip())));
            case "str", "inlineStr", "d" -> Cell.text(text.text());
            case "b" -> new Cell(Cell.Form.BOOLEAN, text.raw().equals("1") ? "TRUE" : "FALSE");
            case "e" -> new Cell(Cell.Form.ERROR, text.raw());
            default -> number(text.raw().strip(), style);
        };
    }

    private Cell number(String digits, int style) {
        if (digits.isEmpty()) {
            return Cell.EMPTY;
        }
        NumberFormats.Shows shows = formats.of(style);
        if (shows == NumberFormats.Shows.PLAIN) {
            return new Cell(Cell.Form.NUMBER, checked(digits));
        }
        Optional<String> day =
                shows == NumberFormats.Shows.SHAPED
                        ? Optional.empty()
                        : SerialDates.text(
                                new BigDecimal(digits),
                                from1904,
                                shows == NumberFormats.Shows.DAY_AND_TIME);
        return day.map(d -> new Cell(Cell.Form.DATE, d))
                .orElseGet(() -> new Cell(Cell.Form.SHAPED_NUMBER, checked(digits)));
    }

    /** The digits, if they are a number; otherwise the file is damaged. */
    private static String checked(String digits) {
        return digits.length() <= 40 ? new BigDecimal(digits).toString() : checkedLong(digits);
    }

    private static String checkedLong(String digits) {
        throw new NumberFormatException("a number of " + digits.length() + " characters");
    }
}
