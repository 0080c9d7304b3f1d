/** The parts counter: kits and loose parts in and out. */
@NullMarked
package counterbench.shell.counter;

import org.jspecify.annotations.NullMarked;
