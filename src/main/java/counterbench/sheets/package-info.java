/**
 * Sheets as people keep them: reads {@code .csv} and {@code .xlsx} files row by row into facts,
 * says of every cell that cannot be taken what is wrong and what would be right, and writes copies
 * with the refused rows marked. A whole sheet is never held in memory. Knows files, but no library
 * for workbooks; that one is behind {@link counterbench.sheets.SheetFormat} and {@link
 * counterbench.sheets.report.WorkbookSink}.
 */
@NullMarked
package counterbench.sheets;

import org.jspecify.annotations.NullMarked;
