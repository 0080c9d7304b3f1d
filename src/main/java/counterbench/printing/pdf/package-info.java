/**
 * Draws what goes to a printer as PDF. The only code that knows the libraries for PDF and for
 * symbols. Lengths are points, 72 to the inch, from a page's upper left corner.
 */
@NullMarked
package counterbench.printing.pdf;

import org.jspecify.annotations.NullMarked;
