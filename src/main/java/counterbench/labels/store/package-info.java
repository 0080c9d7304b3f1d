/** Reads what labels are put on. */
@NullMarked
package counterbench.labels.store;

import org.jspecify.annotations.NullMarked;
