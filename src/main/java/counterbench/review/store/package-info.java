/** Reads what the review judges, job by job in the order of the keys, and keeps what it found. */
@NullMarked
package counterbench.review.store;

import org.jspecify.annotations.NullMarked;
