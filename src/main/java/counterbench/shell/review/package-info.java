/** Commands that review sites, show findings and settle them. */
@NullMarked
package counterbench.shell.review;

import org.jspecify.annotations.NullMarked;
