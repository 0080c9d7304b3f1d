/**
 * The rules about the steps of the procedure: whether all were done, in order, with readings within
 * their limits and instruments in calibration. Pure. A finding or the lack of one is never leave to
 * drive: the maker's procedure and licensed practice come first.
 */
@NullMarked
package counterbench.procedure.rules;

import org.jspecify.annotations.NullMarked;
