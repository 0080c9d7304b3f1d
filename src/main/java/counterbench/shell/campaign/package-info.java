/** Commands about campaigns and their packs. */
@NullMarked
package counterbench.shell.campaign;

import org.jspecify.annotations.NullMarked;
