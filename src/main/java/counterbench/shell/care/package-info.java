/** Commands that look after the journal, the store and the home folder. */
@NullMarked
package counterbench.shell.care;

import org.jspecify.annotations.NullMarked;
