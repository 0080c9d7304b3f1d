/** The rules about kits as received, store and kit balances, and counts. Pure. */
@NullMarked
package counterbench.stock.rules;

import org.jspecify.annotations.NullMarked;
