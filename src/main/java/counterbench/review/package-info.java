/**
 * The review: brings the facts of a job together, runs every rule over them, and tells settled
 * findings from open ones. Pure.
 */
@NullMarked
package counterbench.review;

import org.jspecify.annotations.NullMarked;
