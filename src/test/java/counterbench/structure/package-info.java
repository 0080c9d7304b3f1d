/**
 * The rules about who may know whom in the house, and bad examples of each, kept on purpose under
 * {@code bad} to show that the rules see them.
 */
@NullMarked
package counterbench.structure;

import org.jspecify.annotations.NullMarked;
