/**
 * Words that every feature uses: sites, quantities, addresses of facts, problems. Knows nothing
 * else of the program.
 */
@NullMarked
package counterbench.shared;

import org.jspecify.annotations.NullMarked;
