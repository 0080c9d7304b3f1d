/**
 * The store: where it lies, how it is opened and migrated, how keys are made, and jOOQ's settings.
 * Generated tables are in {@code generated}. Knows SQL and nothing of the trade.
 */
@NullMarked
package counterbench.db;

import org.jspecify.annotations.NullMarked;
