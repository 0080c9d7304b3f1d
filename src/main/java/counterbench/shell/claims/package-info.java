/** Commands of the warranty desk. */
@NullMarked
package counterbench.shell.claims;

import org.jspecify.annotations.NullMarked;
