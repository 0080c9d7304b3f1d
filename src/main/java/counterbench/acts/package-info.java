/**
 * What people record as it happens. An act looks at the situation of the jobs, kits and parts that
 * it names, refuses what cannot be, and says which facts it makes. Bad news that is true is a fact
 * like any other; what finding it will raise is said at once.
 */
@NullMarked
package counterbench.acts;

import org.jspecify.annotations.NullMarked;
