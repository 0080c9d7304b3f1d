/**
 * Taking in paper: looks names and known rows up in the store, stages what is new, posts it at the
 * end.
 */
@NullMarked
package counterbench.intake.store;

import org.jspecify.annotations.NullMarked;
