/** Looking after the store: verifying, reversing, backing up, restoring. Pure. */
@NullMarked
package counterbench.care;

import org.jspecify.annotations.NullMarked;
