/**
 * The kinds of facts and their columns, as data: what sheets bring in, what the journal keeps, and
 * what its hashes are taken over. Pure.
 */
@NullMarked
package counterbench.facts;

import org.jspecify.annotations.NullMarked;
