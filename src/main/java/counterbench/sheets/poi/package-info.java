/**
 * Workbooks in and out: the only code that knows Apache POI. Reads through POI's event model on the
 * values that the file holds, never on the text that a spreadsheet would show, and writes through
 * its streaming model. Neither keeps rows in memory.
 */
@NullMarked
package counterbench.sheets.poi;

import org.jspecify.annotations.NullMarked;
