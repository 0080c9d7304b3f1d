/** Sites and the people who act at them: roles, PINs, signing in. Pure. */
@NullMarked
package counterbench.people;

import org.jspecify.annotations.NullMarked;
