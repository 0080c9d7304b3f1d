/**
 * Labels: what a scan means, and what our own labels bear.
 *
 * <p>Our own labels say the part number under 240, a kit's serial number under 21, lot and last day
 * of use under 10 and 17; a job's name under 91, a core's tag under 92, a shipment's name under 93
 * or its SSCC under 00.
 */
@NullMarked
package counterbench.labels;

import org.jspecify.annotations.NullMarked;
