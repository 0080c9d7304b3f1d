/** Reads a site's facts for the account of a month. */
@NullMarked
package counterbench.month.store;

import org.jspecify.annotations.NullMarked;
