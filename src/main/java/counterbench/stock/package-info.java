/**
 * Accounts and moves: kits, loose parts, issues, uses, counts, and the balances that follow from
 * them. Pure.
 */
@NullMarked
package counterbench.stock;

import org.jspecify.annotations.NullMarked;
