/**
 * What the loose parts in the store are worth: costs as they flow in, out and stay, by one of the
 * usual methods of inventory costing. One method is for claims; the others are for the accounts of
 * those who keep their books by them.
 */
@NullMarked
package counterbench.stock.worth;

import org.jspecify.annotations.NullMarked;
