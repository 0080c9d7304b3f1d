/** Commands about the shell itself. */
@NullMarked
package counterbench.shell.builtin;

import org.jspecify.annotations.NullMarked;
