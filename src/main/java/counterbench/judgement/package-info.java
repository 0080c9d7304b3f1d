/**
 * What a judgement is: rules with their severity, findings, and the collector that rules write to.
 */
@NullMarked
package counterbench.judgement;

import org.jspecify.annotations.NullMarked;
