/**
 * Whole days of the three users in a real terminal: what they type, and what the screen shows. A
 * day is a file in the folder {@code days} of the test resources.
 */
@NullMarked
package counterbench.days;

import org.jspecify.annotations.NullMarked;
