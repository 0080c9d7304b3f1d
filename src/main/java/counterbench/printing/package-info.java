/**
 * What goes to a printer, as values: sheets of labels, and documents made of headings, text and
 * tables. How they are drawn is known in {@code pdf} alone.
 */
@NullMarked
package counterbench.printing;

import org.jspecify.annotations.NullMarked;
