/**
 * A month's account of a campaign: what its completed jobs consumed against what they require, and
 * where the goods came from and went. Pure; accumulates job by job and move by move, so that memory
 * grows with part numbers and not with jobs.
 */
@NullMarked
package counterbench.month;

import org.jspecify.annotations.NullMarked;
