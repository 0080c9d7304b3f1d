/** Talks with a person at a terminal: prompt, history, completion, Ctrl-C and Ctrl-D. */
@NullMarked
package counterbench.shell.console;

import org.jspecify.annotations.NullMarked;
