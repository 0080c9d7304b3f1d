/** Commands of the bench: jobs, hardware, steps, and the loop that takes scans. */
@NullMarked
package counterbench.shell.bench;

import org.jspecify.annotations.NullMarked;
