/** Jobs, the hardware on the vehicle, and the rules about both. Pure. */
@NullMarked
package counterbench.job;

import org.jspecify.annotations.NullMarked;
