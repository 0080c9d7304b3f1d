/** Commands about a month: what was consumed, what lies where, workbooks. */
@NullMarked
package counterbench.shell.month;

import org.jspecify.annotations.NullMarked;
