/** Commands that print labels. */
@NullMarked
package counterbench.shell.labels;

import org.jspecify.annotations.NullMarked;
