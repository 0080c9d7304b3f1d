/** The home folder and what else the operating system says: environment variables and folders. */
@NullMarked
package counterbench.home;

import org.jspecify.annotations.NullMarked;
