/** The core rack: removed units from the vehicle to the return centre's answer. */
@NullMarked
package counterbench.shell.rack;

import org.jspecify.annotations.NullMarked;
