/** The rules about claims and credits, one class a rule. Pure. */
@NullMarked
package counterbench.claims.rules;

import org.jspecify.annotations.NullMarked;
