/** Looks up what an act is decided on, and records it. */
@NullMarked
package counterbench.acts.store;

import org.jspecify.annotations.NullMarked;
