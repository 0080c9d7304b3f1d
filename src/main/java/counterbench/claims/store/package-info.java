/** Looks up the lines of remittances and what they were matched to. */
@NullMarked
package counterbench.claims.store;

import org.jspecify.annotations.NullMarked;
