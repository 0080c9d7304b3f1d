/**
 * Workbooks out, as data: which sheets a report has, which fields stand in which columns under
 * which headings, what is totalled and charted. Workshops change a layout in a YAML file; the
 * program's own layouts say which sheets and fields there are.
 */
@NullMarked
package counterbench.sheets.report;

import org.jspecify.annotations.NullMarked;
