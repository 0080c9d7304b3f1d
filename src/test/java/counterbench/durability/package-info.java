/** Processes that are killed while they record, and what must be found afterwards. */
@NullMarked
package counterbench.durability;

import org.jspecify.annotations.NullMarked;
