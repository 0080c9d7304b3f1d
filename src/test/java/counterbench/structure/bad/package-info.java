/**
 * Bad examples: each breaks one rule of the structure, and a test says that the rule sees it. No
 * part of the program.
 */
@NullMarked
package counterbench.structure.bad;

import org.jspecify.annotations.NullMarked;
