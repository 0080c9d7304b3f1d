/** Marks, instruments, calibrations, and the rules about the steps of the procedure. Pure. */
@NullMarked
package counterbench.procedure;

import org.jspecify.annotations.NullMarked;
