/**
 * Tables of facts that come packed with the program, such as unit factors: read from the program
 * itself, never from the machine that it runs on, so they are the same everywhere.
 */
@NullMarked
package counterbench.shared.packed;

import org.jspecify.annotations.NullMarked;
