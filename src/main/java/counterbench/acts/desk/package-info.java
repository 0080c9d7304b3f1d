/** What the warranty desk does: claims drafted, submitted and withdrawn, credits matched. Pure. */
@NullMarked
package counterbench.acts.desk;

import org.jspecify.annotations.NullMarked;
