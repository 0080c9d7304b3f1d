/** What all commands share that record an act as it happens. */
@NullMarked
package counterbench.shell.acts;

import org.jspecify.annotations.NullMarked;
