/**
 * Taking in paper: what a row may say and name, and whether it is known already. Pure.
 *
 * <p>A row that breaks one of these checks is refused, and with it the whole import. What is bad
 * news but possible is not refused here: the review says it.
 */
@NullMarked
package counterbench.intake;

import org.jspecify.annotations.NullMarked;
