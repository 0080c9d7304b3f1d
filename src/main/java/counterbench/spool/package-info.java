/** Rows that come in any order and are handed over sorted, by way of temporary files if many. */
@NullMarked
package counterbench.spool;

import org.jspecify.annotations.NullMarked;
