/** Sites and people in SQL. */
@NullMarked
package counterbench.people.store;

import org.jspecify.annotations.NullMarked;
