/** The journal in SQL: fact tables, writing facts, posting entries, verification. */
@NullMarked
package counterbench.journal.store;

import org.jspecify.annotations.NullMarked;
