/**
 * What is done on a job at the bench: opened and completed, hardware fitted, refitted, taken off,
 * put back and scrapped, steps marked; and how a job stands. Pure.
 */
@NullMarked
package counterbench.acts.bench;

import org.jspecify.annotations.NullMarked;
