/** The rules about cores, shipments and what the return centre says, one class a rule. Pure. */
@NullMarked
package counterbench.cores.rules;

import org.jspecify.annotations.NullMarked;
