/** The command that fills a home of its own with the invented garage of Larkmere. */
@NullMarked
package counterbench.shell.demo;

import org.jspecify.annotations.NullMarked;
