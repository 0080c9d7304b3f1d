/** Writes rows for people and for programs: tables, JSON and CSV. */
@NullMarked
package counterbench.shell.print;

import org.jspecify.annotations.NullMarked;
