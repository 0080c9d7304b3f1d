/** Looking after the store itself: what it takes in SQL and files. */
@NullMarked
package counterbench.care.store;

import org.jspecify.annotations.NullMarked;
