/** Commands about the store's sites and people: setting up, signing in, who may do what. */
@NullMarked
package counterbench.shell.people;

import org.jspecify.annotations.NullMarked;
