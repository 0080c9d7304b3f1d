/**
 * Which claim a line of a remittance pays: likenesses, and what may be taken without asking. Pure.
 */
@NullMarked
package counterbench.claims.matching;

import org.jspecify.annotations.NullMarked;
