/** Campaign packs: kit contents, procedure, core and claim terms, affected vehicles. Pure. */
@NullMarked
package counterbench.campaign;

import org.jspecify.annotations.NullMarked;
