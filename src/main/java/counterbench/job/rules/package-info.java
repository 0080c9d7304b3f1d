/**
 * The rules about the hardware, the vehicle and the standing of a job, and the facts that they
 * judge. Pure.
 */
@NullMarked
package counterbench.job.rules;

import org.jspecify.annotations.NullMarked;
