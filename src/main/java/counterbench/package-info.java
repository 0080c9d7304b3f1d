/** Counterbench: one account of kits, jobs and cores for service campaign work. */
@NullMarked
package counterbench;

import org.jspecify.annotations.NullMarked;
