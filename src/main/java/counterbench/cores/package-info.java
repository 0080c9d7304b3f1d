/**
 * The life of a removed unit: drain, plugs, packing, shipment, acknowledgement, and the rules about
 * it. Pure.
 */
@NullMarked
package counterbench.cores;

import org.jspecify.annotations.NullMarked;
