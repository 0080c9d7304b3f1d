/** Claims, credits, and the rules about them. Pure. */
@NullMarked
package counterbench.claims;

import org.jspecify.annotations.NullMarked;
