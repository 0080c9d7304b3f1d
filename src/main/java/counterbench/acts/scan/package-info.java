/**
 * The loop that takes scans at the bench: what a scan means on a job as it stands, and what is done
 * about it. Pure: everything that lasts is in the facts, and what is only kept in mind (which kit,
 * which core, which instrument) may be lost without harm.
 */
@NullMarked
package counterbench.acts.scan;

import org.jspecify.annotations.NullMarked;
