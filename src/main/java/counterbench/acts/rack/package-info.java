/**
 * What is done to a removed unit: draining, plugging, packing, shipping. Each act refuses what
 * cannot be, and says what is bad news and how to put it right.
 */
@NullMarked
package counterbench.acts.rack;

import org.jspecify.annotations.NullMarked;
