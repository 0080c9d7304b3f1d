/** The command that takes in paper. */
@NullMarked
package counterbench.shell.intake;

import org.jspecify.annotations.NullMarked;
